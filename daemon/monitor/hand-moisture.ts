import type { HandMoisture } from '../contract/curves.ts';
import { toMoment } from '../contract/moment.ts';
import { placeOfBatch } from '../rules/batch.ts';
import type { HandReadingFact } from '../rules/facts.ts';
import type { SiteFacts } from './site-facts.ts';

/** Most measurings of one curve: more cannot be told apart. The newest are kept. */
const mostMeasured = 200;

/** Wood moisture that people measured by hand, for the curves it is drawn with. */
export function handMoisture(facts: () => SiteFacts) {
  function told(reading: HandReadingFact): HandMoisture {
    const { batches, places } = facts();
    const { batchId, placeId, at, values } = reading;
    return {
      at: toMoment(at),
      batchId,
      batchName: batches.get(batchId ?? '')?.name ?? null,
      placeId,
      placeName: places.get(placeId ?? '')?.name ?? null,
      percent: values,
    };
  }

  function within(
    from: number,
    to: number,
    isOfIt: (reading: HandReadingFact) => boolean,
  ): HandMoisture[] {
    return facts()
      .handReadings.filter(
        (one) => one.quantity === 'wood-moisture' && one.at >= from && one.at <= to && isOfIt(one),
      )
      .sort((a, b) => a.at - b.at)
      .slice(-mostMeasured)
      .map(told);
  }

  const layAt = (batchId: string, at: number) => placeOfBatch(facts().moves.get(batchId) ?? [], at);

  return {
    /** Of one batch, and of the place where it lay when no boards were named. */
    ofBatch: (batchId: string, from: number, to: number) =>
      within(from, to, (one) =>
        one.batchId === null ? one.placeId === layAt(batchId, one.at) : one.batchId === batchId,
      ),
    /** Of a place, and of every batch that lay there then. */
    ofPlace: (placeId: string, from: number, to: number) =>
      within(
        from,
        to,
        (one) => placeId === (one.batchId === null ? one.placeId : layAt(one.batchId, one.at)),
      ),
  };
}
