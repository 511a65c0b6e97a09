import { useState } from 'preact/hooks';
import type { MqttAccess, MqttMode } from '../../daemon/contract/mqtt-access.ts';
import { ProblemNote } from '../forms/problem-note.tsx';
import { useSending } from '../forms/use-sending.ts';
import { useShed } from '../shed-context.ts';

/** Closes the broker once everything in use is paired, or may fall silent by name. */
export function BrokerClosing({
  access,
  onChanged,
}: {
  access: MqttAccess;
  onChanged: () => void;
}) {
  const { api } = useShed();
  const sending = useSending();
  const [granted, setGranted] = useState<readonly string[]>([]);
  const [listeners, setListeners] = useState(false);
  const silent = access.sensors.filter(({ pairing }) => pairing !== 'paired');
  const open = silent.filter(({ id }) => !granted.includes(id));
  const hearers = [...new Set(access.listeners.map(({ client }) => client))];
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
          disabled={sending.busy}
          onClick={() => void change('open')}
        >
          Open it again for everyone
        </button>
        <ProblemNote problem={sending.problem} />
      </>
    );
  }
  return (
    <div class="closing">
      <h3>Close it</h3>
      {silent.length === 0 && hearers.length === 0 && (
        <p>Every sensor in use publishes under its name: nothing falls silent.</p>
      )}
      {silent.length > 0 && (
        <>
          <p>
            These would no longer be heard. Pair them first, or tick those that may fall silent.
          </p>
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
              {name ?? id} may fall silent
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
          These listeners without a name may hear nothing more: {hearers.slice(0, 5).join(', ')}
          {hearers.length > 5 && ` and ${hearers.length - 5} more`}
        </label>
      )}
      <button
        type="button"
        class="button button-main"
        disabled={sending.busy || !ready}
        onClick={() => void change('closed')}
      >
        Close the broker
      </button>
      <ProblemNote problem={sending.problem} />
    </div>
  );
}
