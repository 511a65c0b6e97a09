import { useCallback } from 'preact/hooks';
import { ProblemNote } from '../forms/problem-note.tsx';
import { useShed } from '../shed-context.ts';
import { useReply } from '../use-reply.ts';
import { Sheet } from './sheet.tsx';

/** The lock-up list on paper, for the door: it works when the computer does not. */
export function DoorCard() {
  const { api } = useShed();
  const { replied } = useReply(useCallback(() => api.call('readLockUp', { query: {} }), [api]));
  if (replied.kind === 'loading') return <main class="page" aria-busy="true" />;
  if (replied.kind === 'failed') {
    return (
      <main class="page">
        <h1>The card cannot be drawn</h1>
        <ProblemNote problem={replied.problem} />
      </main>
    );
  }
  return (
    <Sheet
      title="Card for the door"
      how="A4 upright. Hang it at eye level on the inside of the door that is locked last."
    >
      <section class="door-card" aria-label="Card">
        <p class="door-card-name">Before you lock up</p>
        <p>
          On every day of painting, oiling or sanding. Ticking proves nothing: look at it, touch it.
        </p>
        <ol>
          {replied.reply.card.map(({ title, text }) => (
            <li key={title}>
              <strong>{title}.</strong> {text}
            </li>
          ))}
        </ol>
        <p class="door-card-fire">
          Smoke or a smell of burning: everybody out, shut the door, call the fire service:
          ____________. Our address: ____________________________
        </p>
        <p class="door-card-foot">
          Common practice; local codes and the paint maker’s sheet come first.
        </p>
      </section>
    </Sheet>
  );
}
