import { useCallback } from 'preact/hooks';
import { ProblemNote } from '../forms/problem-note.tsx';
import { useShed } from '../shed-context.ts';
import { useReply } from '../use-reply.ts';
import { mixtureWords, speciesWords, surfaceWords } from '../words/thing-words.ts';
import { BatchCode, PhoneAddress, usePhoneAddress } from './batch-link.tsx';
import { Sheet } from './sheet.tsx';

/** A card that hangs on the rack: which boards, which coats, and a QR code to their page. */
export function RackCard({ given }: { given: URLSearchParams }) {
  const { api, live, calendar } = useShed();
  const phone = usePhoneAddress();
  const id = given.get('batchId') ?? '';
  const { replied } = useReply(
    useCallback(() => api.call('readBatch', { params: { id } }), [api, id]),
  );
  if (replied.kind === 'loading') return <main class="page" aria-busy="true" />;
  if (replied.kind === 'failed') {
    return (
      <main class="page">
        <h1>The card cannot be drawn</h1>
        <ProblemNote problem={replied.problem} />
      </main>
    );
  }
  const batch = replied.reply;
  const { count, lengthMm, widthMm, thicknessMm } = batch.boards;
  const place = live.overview.value?.places.find((one) => one.id === batch.placeId);
  return (
    <Sheet
      title="Card for the rack"
      how="A5 across. Hang it where a wet board cannot touch it; the code opens the page of these boards on a phone."
    >
      <PhoneAddress {...phone} />
      <section class="rack-card" aria-label="Card">
        <div class="rack-card-head">
          <div>
            <p class="rack-card-name">{batch.name}</p>
            <p>{place?.name ?? ''}</p>
            <p>
              {count} × {speciesWords[batch.species]}, {surfaceWords[batch.surface].toLowerCase()},{' '}
              {lengthMm} × {widthMm} × {thicknessMm} mm
            </p>
          </div>
          <BatchCode id={batch.id} address={phone.address} mm={45} />
        </div>
        <table>
          <thead>
            <tr>
              <th scope="col">Coat</th>
              <th scope="col">Mixture</th>
              <th scope="col">Last board done</th>
              <th scope="col">Felt dry</th>
            </tr>
          </thead>
          <tbody>
            {batch.plan.coats.map((planned, i) => {
              const coat = batch.coats.find((one) => one.coat === i);
              return (
                <tr key={planned.name}>
                  <th scope="row">{planned.name}</th>
                  <td>{mixtureWords(planned.mixture)}</td>
                  <td>{coat ? calendar.exact(Date.parse(coat.finishedAt)) : ''}</td>
                  <td />
                </tr>
              );
            })}
          </tbody>
        </table>
        <p class="rack-card-foot">
          Wet: do not touch but to test. Oily rags catch fire by themselves.
        </p>
      </section>
    </Sheet>
  );
}
