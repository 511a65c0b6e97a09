import { useCallback, useState } from 'preact/hooks';
import type {
  MadeMqttLogin,
  MqttAccess,
  PairingSensor,
} from '../../daemon/contract/mqtt-access.ts';
import { agoWords } from '../format/painters-time.ts';
import { ProblemNote } from '../forms/problem-note.tsx';
import { useSending } from '../forms/use-sending.ts';
import { useShed } from '../shed-context.ts';
import { useReply } from '../use-reply.ts';
import { modeWords, pairingWords } from '../words/access-words.ts';
import { BrokerClosing } from './broker-closing.tsx';
import { LoginForm } from './login-form.tsx';
import { MadePassword } from './made-password.tsx';

/** Who may publish readings: from “try it out” to “closed”, without silencing anything unasked. */
export function BrokerPanel() {
  const { api } = useShed();
  const { replied, again } = useReply(useCallback(() => api.call('readMqttAccess', {}), [api]));
  const [made, setMade] = useState<MadeMqttLogin | null>(null);
  if (replied.kind !== 'there') return null;
  const access = replied.reply;
  if (access.broker === 'external') {
    return <p>The sensors are at another broker: names and passwords are set there.</p>;
  }
  const onMade = (login: MadeMqttLogin) => {
    setMade(login);
    again();
  };
  return (
    <>
      <p>{modeWords[access.mode]}</p>
      <SensorPairings access={access} onMade={onMade} />
      <MadePassword made={made} />
      <Seen access={access} />
      <Logins access={access} onChanged={again} />
      <details class="more">
        <summary>Another name: a gateway, a display, a forecast</summary>
        <LoginForm onMade={onMade} />
      </details>
      <BrokerClosing access={access} onChanged={again} />
      <button type="button" class="button button-quiet" onClick={again}>
        Look again
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
  const sending = useSending();
  const now = live.now.value;

  async function make(sensor: PairingSensor): Promise<void> {
    const login = await sending.send(() =>
      api.call('createMqttLogin', { body: { name: sensor.id, sensors: [sensor.id] } }),
    );
    if (login !== null) onMade(login);
  }

  if (access.sensors.length === 0) {
    return <p class="quiet">No sensor has sent anything in the last 30 days.</p>;
  }
  return (
    <>
      <ul class="device-list">
        {access.sensors.map((sensor) => (
          <li key={sensor.id}>
            <p class="device-name">{sensor.name ?? sensor.id}</p>
            <p class="device-state quiet">
              {pairingWords[sensor.pairing]}
              {sensor.latestAt !== null && `; sent ${agoWords(Date.parse(sensor.latestAt), now)}`}
            </p>
            {sensor.pairing === 'unpaired' && (
              <button
                type="button"
                class="button"
                disabled={sending.busy}
                aria-label={`Make a password for ${sensor.name ?? sensor.id}`}
                onClick={() => void make(sensor)}
              >
                Make a password
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
  const { wrongPasswords, strays } = access;
  if (wrongPasswords.length + strays.length === 0) return null;
  return (
    <ul class="plain-list">
      {wrongPasswords.map(({ name, client, at }) => (
        <li key={`${name} ${client}`}>
          <b>{name}</b> came with a wrong password, {agoWords(Date.parse(at), now)}.
        </li>
      ))}
      {strays.map(({ name, topic, at }) => (
        <li key={`${name} ${topic}`}>
          <b>{name}</b> sent to <code>{topic}</code>, which is not its own,{' '}
          {agoWords(Date.parse(at), now)}.
        </li>
      ))}
    </ul>
  );
}

function Logins({ access, onChanged }: { access: MqttAccess; onChanged: () => void }) {
  const { api, live } = useShed();
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
      <summary>Names that were given: {access.logins.length}</summary>
      <ul class="device-list">
        {access.logins.map(({ name, kind, sensors, usedAt }) => (
          <li key={name}>
            <p class="device-name">{name}</p>
            <p class="device-state quiet">
              {kind === 'node' ? `publishes as ${sensors.join(', ')}` : kind}
              {usedAt === null
                ? '; not used yet'
                : `; used ${agoWords(Date.parse(usedAt), live.deviceNow.value)}`}
            </p>
            <button
              type="button"
              class={asked === name ? 'button button-main' : 'button'}
              disabled={sending.busy}
              aria-label={asked === name ? `Take ${name} away for good` : `Take ${name} away`}
              onClick={() => (asked === name ? void remove(name) : setAsked(name))}
            >
              {asked === name ? 'Take it away for good' : 'Take away'}
            </button>
          </li>
        ))}
      </ul>
      <ProblemNote problem={sending.problem} />
    </details>
  );
}
