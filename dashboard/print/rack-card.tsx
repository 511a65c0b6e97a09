import { useCallback } from 'preact/hooks';
import { mixtureLine, withinSentence } from '../format/lists.ts';
import { useOwnName } from '../own-name.ts';
import { useReader } from '../reader.ts';
import { useShed } from '../shed-context.ts';
import { useReply } from '../use-reply.ts';
import { AwaitedSheet } from './awaited-sheet.tsx';
import { BatchCode, PhoneAddress, usePhoneAddress } from './batch-link.tsx';
import { Sheet } from './sheet.tsx';

/** A card that hangs on the rack: which boards, which coats, and a QR code to their page. */
export function RackCard({ given }: { given: URLSearchParams }) {
  const { api, live } = useShed();
  const { words, figures, calendar, locale, units } = useReader();
  const { print, things } = words;
  const { rack } = print;
  const ownName = useOwnName();
  const phone = usePhoneAddress();
  const id = given.get('batchId') ?? '';
  const { replied } = useReply(
    useCallback(() => api.call('readBatch', { params: { id } }), [api, id]),
  );
  if (replied.kind !== 'there') {
    return <AwaitedSheet replied={replied} notDrawn={print.cardNotDrawn} />;
  }
  const batch = replied.reply;
  const { count, lengthMm, widthMm, thicknessMm } = batch.boards;
  const place = live.overview.value?.places.find((one) => one.id === batch.placeId);
  return (
    <Sheet title={rack.title} how={rack.how[units]}>
      <PhoneAddress {...phone} />
      <section class="rack-card" aria-label={print.card}>
        <div class="rack-card-head">
          <div>
            <p class="rack-card-name">{batch.name}</p>
            <p>{place?.name ?? ''}</p>
            <p>
              {rack.boards(
                figures.number(count),
                things.species[batch.species],
                withinSentence(things.surfaces[batch.surface], locale),
                figures.sizes('lengthMm', lengthMm, widthMm, thicknessMm),
              )}
            </p>
          </div>
          <BatchCode id={batch.id} address={phone.address} mm={45} />
        </div>
        <table>
          <thead>
            <tr>
              <th scope="col">{rack.coat}</th>
              <th scope="col">{rack.mixture}</th>
              <th scope="col">{rack.lastBoardDone}</th>
              <th scope="col">{rack.feltDry}</th>
            </tr>
          </thead>
          <tbody>
            {batch.plan.coats.map((planned, i) => {
              const coat = batch.coats.find((one) => one.coat === i);
              return (
                <tr key={planned.name}>
                  <th scope="row">{ownName(planned.name)}</th>
                  <td>{mixtureLine(planned.mixture, things)}</td>
                  <td>{coat ? calendar.exact(Date.parse(coat.finishedAt)) : ''}</td>
                  <td />
                </tr>
              );
            })}
          </tbody>
        </table>
        <p class="rack-card-foot">{rack.foot}</p>
      </section>
    </Sheet>
  );
}
