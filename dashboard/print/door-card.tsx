import { useCallback } from 'preact/hooks';
import { useReader } from '../reader.ts';
import { Said } from '../said.tsx';
import { useShed } from '../shed-context.ts';
import { useReply } from '../use-reply.ts';
import { AwaitedSheet } from './awaited-sheet.tsx';
import { Sheet } from './sheet.tsx';

/** The lock-up list on paper, for the door: it works when the computer does not. */
export function DoorCard() {
  const { api } = useShed();
  const { words, units } = useReader();
  const { print } = words;
  const { door } = print;
  const { replied } = useReply(useCallback(() => api.call('readLockUp', { query: {} }), [api]));
  if (replied.kind !== 'there') {
    return <AwaitedSheet replied={replied} notDrawn={print.cardNotDrawn} />;
  }
  return (
    <Sheet title={door.title} how={door.how[units]}>
      <section class="door-card" aria-label={print.card}>
        <p class="door-card-name">{door.name}</p>
        <p>{door.when}</p>
        <ol>
          {replied.reply.card.map((line) => (
            <li key={line.code + line.title}>
              {door.line(
                <strong>
                  <Said sentence={line.titleSaid} />.
                </strong>,
                <Said sentence={line} />,
              )}
            </li>
          ))}
        </ol>
        <p class="door-card-fire">{door.fire}</p>
        <p class="door-card-foot">{door.foot}</p>
      </section>
    </Sheet>
  );
}
