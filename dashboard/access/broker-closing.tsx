import { useState } from 'preact/hooks';
import type { MqttAccess, MqttMode } from '../../daemon/contract/mqtt-access.ts';
import { ProblemNote } from '../forms/problem-note.tsx';
import { useSending } from '../forms/use-sending.ts';
import { useReader } from '../reader.ts';
import { useShed } from '../shed-context.ts';

/** More listeners than this are only counted. */
const MOST_NAMED = 5;

/** Closes the broker once everything in use is paired, or may fall silent by name. */
export function BrokerClosing({
  access,
  onChanged,
}: {
  access: MqttAccess;
  onChanged: () => void;
}) {
  const { api } = useShed();
  const { broker } = useReader().words.access;
  const sending = useSending();
  const [granted, setGranted] = useState<readonly string[]>([]);
  const [listeners, setListeners] = useState(false);
  const silent = access.sensors.filter(({ pairing }) => pairing !== 'paired');
  const open = silent.filter(({ id }) => !granted.includes(id));
  const hearers = [...new Set(access.listeners.map(({ client }) => client))];
  const clients = hearers.slice(0, MOST_NAMED).join(', ');
  const more = hearers.length - MOST_NAMED;
  const ready = open.length === 0 && (hearers.length === 0 || listeners);

  async function change(mode: MqttMode): Promise<void> {
    const changed = await sending.send(() =>
      api.call('changeMqttMode', {
        body: { mode, silence: [...granted], silenceListeners: listeners },
      }),
    );
    if (changed !== null) onChanged();
  }

  if (access.mode === 'closed') {
    return (
      <>
        <button
          type="button"
          class="button"
          aria-disabled={sending.busy}
          onClick={() => void change('open')}
        >
          {broker.open}
        </button>
        <ProblemNote problem={sending.problem} />
      </>
    );
  }
  return (
    <div class="closing">
      <h3>{broker.closeTitle}</h3>
      {silent.length === 0 && hearers.length === 0 && <p>{broker.nothingFallsSilent}</p>}
      {silent.length > 0 && (
        <>
          <p>{broker.someFallSilent}</p>
          {silent.map(({ id, name }) => (
            <label key={id} class="tick">
              <input
                type="checkbox"
                checked={granted.includes(id)}
                onChange={(event) =>
                  setGranted(
                    event.currentTarget.checked
                      ? [...granted, id]
                      : granted.filter((other) => other !== id),
                  )
                }
              />
              {broker.mayFallSilent(name ?? id)}
            </label>
          ))}
        </>
      )}
      {hearers.length > 0 && (
        <label class="tick">
          <input
            type="checkbox"
            checked={listeners}
            onChange={(event) => setListeners(event.currentTarget.checked)}
          />
          {more > 0 ? broker.listenersSilentMore(clients, more) : broker.listenersSilent(clients)}
        </label>
      )}
      <button
        type="button"
        class="button button-main"
        disabled={!ready}
        aria-disabled={sending.busy}
        onClick={() => void change('closed')}
      >
        {broker.close}
      </button>
      <ProblemNote problem={sending.problem} />
    </div>
  );
}
