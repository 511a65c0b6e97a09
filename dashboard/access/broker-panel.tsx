import { useCallback, useState } from 'preact/hooks';
import type {
  MadeMqttLogin,
  MqttAccess,
  PairingSensor,
} from '../../daemon/contract/mqtt-access.ts';
import { agoOf } from '../format/painters-time.ts';
import { ProblemNote } from '../forms/problem-note.tsx';
import { useSending } from '../forms/use-sending.ts';
import { useReader } from '../reader.ts';
import { useShed } from '../shed-context.ts';
import { useReply } from '../use-reply.ts';
import { BrokerClosing } from './broker-closing.tsx';
import { LoginForm } from './login-form.tsx';
import { MadePassword } from './made-password.tsx';

/** Who may publish readings: from “try it out” to “closed”, without silencing anything unasked. */
export function BrokerPanel() {
  const { api } = useShed();
  const { broker } = useReader().words.access;
  const { replied, again } = useReply(useCallback(() => api.call('readMqttAccess', {}), [api]));
  const [made, setMade] = useState<MadeMqttLogin | null>(null);
  if (replied.kind !== 'there') return null;
  const access = replied.reply;
  if (access.broker === 'external') {
    return <p>{broker.external}</p>;
  }
  const onMade = (login: MadeMqttLogin) => {
    setMade(login);
    again();
  };
  return (
    <>
      <p>{broker.modes[access.mode]}</p>
      <SensorPairings access={access} onMade={onMade} />
      <MadePassword made={made} />
      <Seen access={access} />
      <Logins access={access} onChanged={again} />
      <details class="more">
        <summary>{broker.another}</summary>
        <LoginForm onMade={onMade} />
      </details>
      <BrokerClosing access={access} onChanged={again} />
      <button type="button" class="button button-quiet" onClick={again}>
        {broker.lookAgain}
      </button>
    </>
  );
}

interface PairingsProps {
  access: MqttAccess;
  onMade: (login: MadeMqttLogin) => void;
}

/** Each sensor in use, and how far it is. */
function SensorPairings({ access, onMade }: PairingsProps) {
  const { api, live } = useShed();
  const { access: words, times } = useReader().words;
  const { broker } = words;
  const sending = useSending();
  const now = live.now.value;

  async function make(sensor: PairingSensor): Promise<void> {
    const login = await sending.send(() =>
      api.call('createMqttLogin', { body: { name: sensor.id, sensors: [sensor.id] } }),
    );
    if (login !== null) onMade(login);
  }

  if (access.sensors.length === 0) {
    return <p class="quiet">{broker.noSensor}</p>;
  }
  return (
    <>
      <ul class="device-list">
        {access.sensors.map((sensor) => (
          <li key={sensor.id}>
            <div class="device-said">
              <p class="device-name">{sensor.name ?? sensor.id}</p>
              <p class="device-state quiet">
                {sensor.latestAt === null
                  ? broker.pairings[sensor.pairing]
                  : broker.pairingSent(
                      broker.pairings[sensor.pairing],
                      times.ago(agoOf(Date.parse(sensor.latestAt), now)),
                    )}
              </p>
            </div>
            {sensor.pairing === 'unpaired' && (
              <button
                type="button"
                class="button"
                aria-disabled={sending.busy}
                aria-label={broker.makePasswordFor(sensor.name ?? sensor.id)}
                onClick={() => void make(sensor)}
              >
                {broker.makePassword}
              </button>
            )}
          </li>
        ))}
      </ul>
      <ProblemNote problem={sending.problem} />
    </>
  );
}

/** What went wrong on the way, for whoever sets up a node. */
function Seen({ access }: { access: MqttAccess }) {
  const now = useShed().live.deviceNow.value;
  const { access: words, times } = useReader().words;
  const { broker } = words;
  const { wrongPasswords, strays } = access;
  if (wrongPasswords.length + strays.length === 0) return null;
  return (
    <ul class="plain-list">
      {wrongPasswords.map(({ name, client, at }) => (
        <li key={`${name} ${client}`}>
          {broker.wrongPassword(<b>{name}</b>, times.ago(agoOf(Date.parse(at), now)))}
        </li>
      ))}
      {strays.map(({ name, topic, at }) => (
        <li key={`${name} ${topic}`}>
          {broker.stray(<b>{name}</b>, <code>{topic}</code>, times.ago(agoOf(Date.parse(at), now)))}
        </li>
      ))}
    </ul>
  );
}

function Logins({ access, onChanged }: { access: MqttAccess; onChanged: () => void }) {
  const { api, live } = useShed();
  const { words, figures } = useReader();
  const { broker } = words.access;
  const sending = useSending();
  const [asked, setAsked] = useState<string | null>(null);
  if (access.logins.length === 0) return null;

  async function remove(id: string): Promise<void> {
    const left = await sending.send(() => api.call('removeMqttLogin', { params: { id } }));
    setAsked(null);
    if (left !== null) onChanged();
  }

  return (
    <details class="more">
      <summary>{broker.given(figures.number(access.logins.length))}</summary>
      <ul class="device-list">
        {access.logins.map(({ name, kind, sensors, usedAt }) => (
          <li key={name}>
            <div class="device-said">
              <p class="device-name">{name}</p>
              <p class="device-state quiet">
                {usedAt === null
                  ? broker.notUsedYet(broker.uses[kind](sensors.join(', ')))
                  : broker.used(
                      broker.uses[kind](sensors.join(', ')),
                      words.times.ago(agoOf(Date.parse(usedAt), live.deviceNow.value)),
                    )}
              </p>
            </div>
            <button
              type="button"
              class={asked === name ? 'button button-main' : 'button'}
              aria-disabled={sending.busy}
              aria-label={
                asked === name ? broker.takeAwaySurelyNamed(name) : broker.takeAwayNamed(name)
              }
              onClick={() => (asked === name ? void remove(name) : setAsked(name))}
            >
              {asked === name ? broker.takeAwaySurely : broker.takeAway}
            </button>
          </li>
        ))}
      </ul>
      <ProblemNote problem={sending.problem} />
    </details>
  );
}
