import { useCallback } from 'preact/hooks';
import type { Session } from '../../daemon/contract/access.ts';
import { ProblemNote } from '../forms/problem-note.tsx';
import { useSending } from '../forms/use-sending.ts';
import { useShed } from '../shed-context.ts';
import { useReply } from '../use-reply.ts';
import { standingWords } from '../words/access-words.ts';
import { BrokerPanel } from './broker-panel.tsx';
import { ChoosePinForm } from './choose-pin-form.tsx';
import { DeviceList } from './device-list.tsx';
import { LogInForm } from './log-in-form.tsx';
import { PairForm } from './pair-form.tsx';

/** Who may do what from here: log-in, PINs, tablets and devices. */
export function AccessPage() {
  const { api, live } = useShed();
  const { replied, again } = useReply(useCallback(() => api.call('readSession', {}), [api]));
  if (replied.kind === 'loading') return <main class="page" aria-busy="true" />;
  if (replied.kind === 'failed') {
    return (
      <main class="page access">
        <h1>Access</h1>
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
      <h1>Access</h1>
      <p class="access-standing">{standingWords(session)}</p>
      <div class="setup-columns">
        {session.by === 'log-in' ? (
          <LoggedIn session={session} onChanged={changed} />
        ) : (
          <Stranger session={session} onChanged={changed} />
        )}
      </div>
      {session.role === 'own' && (
        <section class="panel" aria-labelledby="broker-title">
          <h2 id="broker-title">Who may publish readings</h2>
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
  const { pinSet, by } = session;
  return (
    <>
      <section class="panel" aria-labelledby="pin-title">
        <h2 id="pin-title">{pinSet ? 'Log in' : 'Choose a PIN'}</h2>
        {pinSet && <LogInForm onLoggedIn={onChanged} />}
        {!pinSet && by === 'this-computer' && (
          <>
            <p>
              With a PIN, work can be recorded from any phone in the shed. From then on this
              computer asks for it too.
            </p>
            <ChoosePinForm whose="own" proof="none" onSet={onChanged} />
          </>
        )}
        {!pinSet && by !== 'this-computer' && (
          <>
            <p>
              The daemon printed a code when it started. It shows that you are the one who runs it.
            </p>
            <ChoosePinForm whose="own" proof="set-up-code" onSet={onChanged} />
          </>
        )}
        {pinSet && (
          <p class="quiet">
            Who has forgotten the PIN sets a new one on the computer itself, with{' '}
            <code>boardcure pin</code>.
          </p>
        )}
      </section>
      {pinSet && by !== 'pairing' && (
        <section class="panel" aria-labelledby="pair-title">
          <h2 id="pair-title">Make this a wall tablet</h2>
          <p>A paired tablet may look for as long as nobody unpairs it, and change nothing.</p>
          <PairForm onPaired={onChanged} />
        </section>
      )}
    </>
  );
}

function LoggedIn({ session, onChanged }: PartProps) {
  const { api } = useShed();
  const sending = useSending();
  const isOwner = session.role === 'own';

  async function logOut(): Promise<void> {
    if ((await sending.send(() => api.call('logOut', {}))) !== null) onChanged();
  }

  return (
    <>
      <section class="panel" aria-labelledby="this-title">
        <h2 id="this-title">This device</h2>
        <p>It is called “{session.device}”, and stays logged in while it is used.</p>
        <button type="button" class="button" disabled={sending.busy} onClick={() => void logOut()}>
          Log out
        </button>
      </section>
      {isOwner && (
        <section class="panel" aria-labelledby="device-title">
          <h2 id="device-title">Devices</h2>
          <DeviceList onLoggedOut={onChanged} />
        </section>
      )}
      {isOwner && (
        <section class="panel" aria-labelledby="own-title">
          <h2 id="own-title">Change the PIN</h2>
          <p>Whoever was logged in by the old one logs in again.</p>
          <ChoosePinForm whose="own" proof="current-pin" onSet={onChanged} />
        </section>
      )}
      {isOwner && (
        <section class="panel" aria-labelledby="second-title">
          <h2 id="second-title">A second PIN</h2>
          <SecondPin session={session} onChanged={onChanged} />
        </section>
      )}
    </>
  );
}

function SecondPin({ session, onChanged }: PartProps) {
  const { api } = useShed();
  const sending = useSending();

  async function remove(): Promise<void> {
    const removed = await sending.send(() =>
      api.call('removePin', { params: { role: 'operate' } }),
    );
    if (removed !== null) onChanged();
  }

  return (
    <>
      <p>
        For those who record work and should leave settings and devices alone.{' '}
        {session.operatorPinSet ? 'One is set.' : 'None is set.'}
      </p>
      <ChoosePinForm whose="operate" proof="none" onSet={onChanged} />
      {session.operatorPinSet && (
        <button
          type="button"
          class="button button-quiet"
          disabled={sending.busy}
          onClick={() => void remove()}
        >
          Remove the second PIN
        </button>
      )}
    </>
  );
}
