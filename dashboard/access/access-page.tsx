import { useCallback } from 'preact/hooks';
import type { Session } from '../../daemon/contract/access.ts';
import { ProblemNote } from '../forms/problem-note.tsx';
import { useSending } from '../forms/use-sending.ts';
import { useReader } from '../reader.ts';
import { useShed } from '../shed-context.ts';
import { useReply } from '../use-reply.ts';
import { BrokerPanel } from './broker-panel.tsx';
import { ChoosePinForm } from './choose-pin-form.tsx';
import { DeviceList } from './device-list.tsx';
import { LogInForm } from './log-in-form.tsx';
import { PairForm } from './pair-form.tsx';
import { standingLine } from './standing-line.ts';

/** Who may do what from here: log-in, PINs, tablets and devices. */
export function AccessPage() {
  const { api, live } = useShed();
  const { access } = useReader().words;
  const { replied, again } = useReply(useCallback(() => api.call('readSession', {}), [api]));
  if (replied.kind === 'loading') return <main class="page" aria-busy="true" />;
  if (replied.kind === 'failed') {
    return (
      <main class="page access">
        <h1>{access.title}</h1>
        <ProblemNote problem={replied.problem} />
      </main>
    );
  }
  const session = replied.reply;
  const changed = () => {
    again();
    live.reopen();
  };
  return (
    <main class="page access">
      <h1>{access.title}</h1>
      <p class="access-standing">{standingLine(session, access)}</p>
      <div class="setup-columns">
        {session.by === 'log-in' ? (
          <LoggedIn session={session} onChanged={changed} />
        ) : (
          <Stranger session={session} onChanged={changed} />
        )}
      </div>
      {session.role === 'own' && (
        <section class="panel" aria-labelledby="broker-title">
          <h2 id="broker-title">{access.broker.title}</h2>
          <BrokerPanel />
        </section>
      )}
    </main>
  );
}

interface PartProps {
  session: Session;
  onChanged: () => void;
}

function Stranger({ session, onChanged }: PartProps) {
  const { words } = useReader();
  const { choosePin, pairing } = words.access;
  const { pinSet, by } = session;
  return (
    <>
      <section class="panel" aria-labelledby="pin-title">
        <h2 id="pin-title">{pinSet ? words.pin.logIn : choosePin.title}</h2>
        {pinSet && <LogInForm onLoggedIn={onChanged} />}
        {!pinSet && by === 'this-computer' && (
          <>
            <p>{choosePin.whyHere}</p>
            <ChoosePinForm whose="own" proof="none" onSet={onChanged} />
          </>
        )}
        {!pinSet && by !== 'this-computer' && (
          <>
            <p>{choosePin.whyCode}</p>
            <ChoosePinForm whose="own" proof="set-up-code" onSet={onChanged} />
          </>
        )}
        {pinSet && <p class="quiet">{choosePin.forgotten(<code>boardcure pin</code>)}</p>}
      </section>
      {pinSet && by !== 'pairing' && (
        <section class="panel" aria-labelledby="pair-title">
          <h2 id="pair-title">{pairing.title}</h2>
          <p>{pairing.about}</p>
          <PairForm onPaired={onChanged} />
        </section>
      )}
    </>
  );
}

function LoggedIn({ session, onChanged }: PartProps) {
  const { api } = useShed();
  const { access } = useReader().words;
  const sending = useSending();
  const isOwner = session.role === 'own';

  async function logOut(): Promise<void> {
    if ((await sending.send(() => api.call('logOut', {}))) !== null) onChanged();
  }

  return (
    <>
      <section class="panel" aria-labelledby="this-title">
        <h2 id="this-title">{access.thisDevice.title}</h2>
        <p>{access.thisDevice.called(session.device ?? '')}</p>
        <button
          type="button"
          class="button"
          aria-disabled={sending.busy}
          onClick={() => void logOut()}
        >
          {access.thisDevice.logOut}
        </button>
      </section>
      {isOwner && (
        <section class="panel" aria-labelledby="device-title">
          <h2 id="device-title">{access.devices.title}</h2>
          <DeviceList onLoggedOut={onChanged} />
        </section>
      )}
      {isOwner && (
        <section class="panel" aria-labelledby="own-title">
          <h2 id="own-title">{access.changePin.title}</h2>
          <p>{access.changePin.about}</p>
          <ChoosePinForm whose="own" proof="current-pin" onSet={onChanged} />
        </section>
      )}
      {isOwner && (
        <section class="panel" aria-labelledby="second-title">
          <h2 id="second-title">{access.secondPin.title}</h2>
          <SecondPin session={session} onChanged={onChanged} />
        </section>
      )}
    </>
  );
}

function SecondPin({ session, onChanged }: PartProps) {
  const { api } = useShed();
  const { secondPin } = useReader().words.access;
  const sending = useSending();

  async function remove(): Promise<void> {
    const removed = await sending.send(() =>
      api.call('removePin', { params: { role: 'operate' } }),
    );
    if (removed !== null) onChanged();
  }

  return (
    <>
      <p>{session.operatorPinSet ? secondPin.isSet : secondPin.isNotSet}</p>
      <ChoosePinForm whose="operate" proof="none" onSet={onChanged} />
      {session.operatorPinSet && (
        <button
          type="button"
          class="button button-quiet"
          aria-disabled={sending.busy}
          onClick={() => void remove()}
        >
          {secondPin.remove}
        </button>
      )}
    </>
  );
}
