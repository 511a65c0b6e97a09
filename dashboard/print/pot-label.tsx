import { useCallback } from 'preact/hooks';
import { ProblemNote } from '../forms/problem-note.tsx';
import { queryOfSheet } from '../pot/pot-query.ts';
import { useShed } from '../shed-context.ts';
import { useReply } from '../use-reply.ts';
import { BatchCode, PhoneAddress, usePhoneAddress } from './batch-link.tsx';
import { Sheet } from './sheet.tsx';

/** A label for the pot: what is in it, for what, since when, and what to mind. */
export function PotLabel({ given }: { given: URLSearchParams }) {
  const { api, live, calendar } = useShed();
  const phone = usePhoneAddress();
  const asked = given.toString();
  const batchId = given.get('batchId');
  const ask = useCallback(
    () => api.call('mixture', { query: queryOfSheet(new URLSearchParams(asked)) }),
    [api, asked],
  );
  const { replied } = useReply(ask);
  if (replied.kind === 'loading') return <main class="page" aria-busy="true" />;
  if (replied.kind === 'failed') {
    return (
      <main class="page">
        <h1>The label cannot be drawn</h1>
        <ProblemNote problem={replied.problem} />
      </main>
    );
  }
  const { amounts, coatName } = replied.reply;
  const batch = live.overview.value?.places
    .flatMap((place) => place.batches)
    .find(({ id }) => id === batchId);
  return (
    <Sheet
      title="Label for the pot"
      how="100 × 70 mm. Cut it out and tape it on with clear tape, before the pot is wet outside."
    >
      {batchId !== null && <PhoneAddress {...phone} />}
      <section class="label" aria-label="Label">
        <div class="label-words">
          <p class="label-name">{coatName ?? 'Mixture'}</p>
          <p>{batch?.name ?? 'for ________________'}</p>
          <ul>
            {amounts.map((amount) => (
              <li key={amount.part}>
                {amount.words} {Math.round((100 * amount.litres) / replied.reply.totalL)} %
              </li>
            ))}
          </ul>
          <p>Colour ________________</p>
          <p>Mixed {calendar.date(live.now.value)}</p>
        </div>
        {batchId !== null && <BatchCode id={batchId} address={phone.address} mm={30} />}
        <p class="label-mind">
          Stir from the bottom. Keep closed, away from flame, locked up from children. Its rags
          catch fire by themselves: into water under a lid. Hazardous waste.
        </p>
      </section>
    </Sheet>
  );
}
