import { useCallback } from 'preact/hooks';
import { useOwnName } from '../own-name.ts';
import { queryOfSheet } from '../pot/pot-query.ts';
import { useReader } from '../reader.ts';
import { useShed } from '../shed-context.ts';
import { useReply } from '../use-reply.ts';
import { AwaitedSheet } from './awaited-sheet.tsx';
import { BatchCode, PhoneAddress, usePhoneAddress } from './batch-link.tsx';
import { Sheet } from './sheet.tsx';

/** As `print.css` draws it. */
const labelMm = { width: 100, height: 70 } as const;

/** A label for the pot: what is in it, for what, since when, and what to mind. */
export function PotLabel({ given }: { given: URLSearchParams }) {
  const { api, live } = useShed();
  const { words, figures, calendar } = useReader();
  const ownName = useOwnName();
  const { print, things } = words;
  const { label } = print;
  const phone = usePhoneAddress();
  const asked = given.toString();
  const batchId = given.get('batchId');
  const ask = useCallback(
    () => api.call('mixture', { query: queryOfSheet(new URLSearchParams(asked)) }),
    [api, asked],
  );
  const { replied } = useReply(ask);
  if (replied.kind !== 'there') {
    return <AwaitedSheet replied={replied} notDrawn={label.notDrawn} />;
  }
  const { amounts, coatName, totalL } = replied.reply;
  const batch = live.overview.value?.places
    .flatMap((place) => place.batches)
    .find(({ id }) => id === batchId);
  return (
    <Sheet
      title={label.title}
      how={label.how(figures.sizes('lengthMm', labelMm.width, labelMm.height))}
    >
      {batchId !== null && <PhoneAddress {...phone} />}
      <section class="label" aria-label={label.label}>
        <div class="label-words">
          <p class="label-name">{coatName === null ? print.mixture : ownName(coatName)}</p>
          <p>{batch?.name ?? label.forBoards}</p>
          <ul>
            {amounts.map((amount) => (
              <li key={amount.part}>
                {label.share(
                  things.ingredients[amount.part],
                  figures.share(amount.litres / totalL),
                )}
              </li>
            ))}
          </ul>
          <p>{label.colour}</p>
          <p>{label.mixed(calendar.date(live.now.value))}</p>
        </div>
        {batchId !== null && <BatchCode id={batchId} address={phone.address} mm={30} />}
        <p class="label-mind">{label.mind}</p>
      </section>
    </Sheet>
  );
}
