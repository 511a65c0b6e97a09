import { useCallback, useEffect } from 'preact/hooks';
import { ProblemNote } from '../forms/problem-note.tsx';
import { useSending } from '../forms/use-sending.ts';
import { mayTry } from '../forms/write-frame.tsx';
import { useReader } from '../reader.ts';
import { InEnglish } from '../said.tsx';
import { useShed } from '../shed-context.ts';
import { useReply } from '../use-reply.ts';

const LOOK_EVERY_MS = 1000;

/** The way into a simulated shed, and out of it again. */
export function SimulatedDoor() {
  const { api, live } = useShed();
  const { simulated: said } = useReader().words.firstRun;
  const sending = useSending();
  const { replied, again } = useReply(useCallback(() => api.call('readSimulatedShed', {}), [api]));
  const shed = replied.kind === 'there' ? replied.reply : null;
  const isStarting = shed?.state === 'starting';
  useEffect(() => {
    if (!isStarting) return;
    const looking = setInterval(again, LOOK_EVERY_MS);
    return () => clearInterval(looking);
  }, [isStarting]);
  const overview = live.overview.value;
  // Within a simulated shed there is no other one, and who may not change anything starts none.
  if (shed === null || overview === null || overview.speed !== 1 || !mayTry(overview)) return null;

  async function turn(on: boolean): Promise<void> {
    await sending.send(() =>
      on ? api.call('startSimulatedShed', { body: {} }) : api.call('stopSimulatedShed', {}),
    );
    again();
  }

  return (
    <section class="simulated" aria-labelledby="simulated-title">
      <h2 id="simulated-title">{said.title}</h2>
      <p>{said.says}</p>
      {shed.fault !== null && (
        <p class="field-fault">
          {said.failed} <InEnglish text={shed.fault} />
        </p>
      )}
      <p role="status">
        {isStarting && said.starting}
        {shed.state === 'running' && said.runs}
      </p>
      <div class="action-row">
        {shed.state === 'off' && (
          <button
            type="button"
            class="button"
            aria-disabled={sending.busy}
            onClick={() => void turn(true)}
          >
            {said.start}
          </button>
        )}
        {shed.port !== null && (
          <a
            class="button"
            href={`http://${location.hostname}:${shed.port}/`}
            target="_blank"
            rel="noopener"
          >
            {said.open}
          </a>
        )}
        {shed.state !== 'off' && (
          <button
            type="button"
            class="button button-quiet"
            aria-disabled={sending.busy}
            onClick={() => void turn(false)}
          >
            {said.stop}
          </button>
        )}
      </div>
      <ProblemNote problem={sending.problem} />
    </section>
  );
}
