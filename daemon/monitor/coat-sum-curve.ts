import type { CureStay } from '../rules/batch.ts';
import { add, addLine, hourMs, noCure, type SpanSum } from '../rules/cure-span.ts';
import { placeFrom, type ReadingRun, runBuilder } from '../rules/reading-run.ts';
import type { CureLedger } from './cure-ledger.ts';
import { curing, type NamedModel } from './hour-book.ts';
import type { PlaceAirReader } from './place-air.ts';

interface SumParts {
  ledger: CureLedger;
  air: Pick<PlaceAirReader, 'eachSample' | 'latest'>;
  named: NamedModel;
}

/** Readings that were looked up last. */
interface Looked {
  placeId: string;
  start: number;
  end: number;
  samples: ReadingRun;
}

const hourAfter = (at: number) => Math.ceil(at / hourMs);

/**
 * What a coat had gathered at moments, in hours at 20 °C: whole hours from the ledger, and where
 * moments lie closer together than hours the readings between them.
 *
 * @param stays - where it cured, ascending
 * @param moments - ascending, UTC epoch ms, all of them no earlier than its first stay
 * @returns a sum for each moment; null after the newest reading
 */
export function sumsAt(
  { ledger, air, named }: SumParts,
  stays: readonly CureStay[],
  moments: readonly number[],
): (SpanSum | null)[] {
  const sums: (SpanSum | null)[] = [];
  let kept: Looked | null = null;
  const total = noCure();
  let next = 0;
  for (const stay of stays) {
    const lastAt = air.latest(stay.placeId, curing)?.at ?? null;
    const endAt = Math.min(stay.toAt ?? Number.POSITIVE_INFINITY, lastAt ?? stay.fromAt);
    let at = stay.fromAt;
    const take = (toAt: number) => {
      if (toAt <= at) return;
      for (const part of stretch(stay.placeId, at, toAt)) add(total, part);
      at = toAt;
    };
    for (;;) {
      const moment = moments[next];
      if (moment === undefined || moment > endAt) break;
      take(moment);
      sums.push({ ...total });
      next++;
    }
    take(endAt);
    // Between the last reading of this place and the next stay nobody knows.
    const isLast = stay === stays.at(-1);
    while (!isLast && next < moments.length && (moments[next] ?? 0) < (stay.toAt ?? 0)) {
      sums.push(null);
      next++;
    }
  }
  while (sums.length < moments.length) sums.push(null);
  return sums;

  function stretch(placeId: string, fromAt: number, toAt: number): SpanSum[] {
    const [firstHour, endHour] = [hourAfter(fromAt), Math.floor(toAt / hourMs)];
    if (endHour <= firstHour) return [line(placeId, fromAt, toAt)];
    return [
      ...(fromAt < firstHour * hourMs ? [line(placeId, fromAt, firstHour * hourMs)] : []),
      ...ledger.eachHour(placeId, named, firstHour, endHour),
      ...(endHour * hourMs < toAt ? [line(placeId, endHour * hourMs, toAt)] : []),
    ];
  }

  /** From the readings; they are looked up an hour or more at once, and kept for the next moment. */
  function line(placeId: string, fromAt: number, toAt: number): SpanSum {
    const sum = noCure();
    const { at, raw, length } = samplesAbout(placeId, fromAt, toAt);
    const sample = (i: number) => ({ at: at[i] as number, value: raw[i] as number });
    for (let i = Math.max(1, placeFrom(at, length, fromAt)); i < length; i++) {
      const a = sample(i - 1);
      if (a.at >= toAt) break;
      addLine(sum, a, sample(i), fromAt, toAt, named.model, named.capC);
    }
    return sum;
  }

  function samplesAbout(placeId: string, fromAt: number, toAt: number) {
    const [start, end] = [Math.floor(fromAt / hourMs) * hourMs, hourAfter(toAt) * hourMs];
    if (kept?.placeId !== placeId || kept.start > start || kept.end < end) {
      const samples = runBuilder();
      for (const { at, value } of air.eachSample(placeId, curing, start, end)) {
        samples.add(at, value, 0);
      }
      kept = { placeId, start, end, samples: samples.run() };
    }
    return kept.samples;
  }
}
