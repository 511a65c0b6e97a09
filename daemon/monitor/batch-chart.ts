import type { BatchChart } from '../contract/series.ts';
import { addLine, hourMs, noCure } from '../rules/cure-span.ts';
import type { CoatFact } from '../rules/facts.ts';
import type { Sample } from '../rules/place-series.ts';
import { degreeHoursPerEquivalentHour } from '../science/cure-rate.ts';
import { follower } from './air-grid.ts';
import type { NamedModel } from './hour-book.ts';
import type { PlaceAirReader } from './place-air.ts';
import { type SiteFacts, staysOfCoat } from './site-facts.ts';

/** Time before the coat that the chart shows, so that a fresh coat has a curve beside it. */
const leadMs = 6 * hourMs;

/**
 * The curves of one coat, thinned to about `points`; a stretch without readings is a null.
 *
 * @param untilAt - end of the chart, UTC epoch ms
 */
export function coatChart(
  facts: SiteFacts,
  air: Pick<PlaceAirReader, 'eachSample'>,
  named: NamedModel,
  coat: CoatFact,
  untilAt: number,
  points: number,
): Omit<BatchChart, 'batchId'> {
  const chart = {
    coatId: coat.id,
    at: [] as number[],
    tempC: [] as (number | null)[],
    rhPercent: [] as (number | null)[],
    degreeHours: [] as (number | null)[],
  };
  const gapMs = named.model.maxGapHours * hourMs;
  const perHour = degreeHoursPerEquivalentHour(named.model);
  const sum = noCure();
  const stays = staysOfCoat(facts, coat);
  const step = Math.max(1, Math.ceil((untilAt - coat.finishedAt + leadMs) / points));
  let shownAt = Number.NEGATIVE_INFINITY;

  for (const [index, stay] of stays.entries()) {
    const from = index === 0 ? stay.fromAt - leadMs : stay.fromAt;
    const to = Math.min(stay.toAt ?? untilAt, untilAt);
    const temperatures = air.eachSample(stay.placeId, 'air-temperature', from, to);
    const humidity = follower(air.eachSample(stay.placeId, 'relative-humidity', from, to), gapMs);
    let before: Sample | null = null;
    let one = temperatures.next();
    while (!one.done) {
      const sample = one.value;
      one = temperatures.next();
      if (before) addLine(sum, before, sample, stay.fromAt, to, named.model, named.capC);
      const gap = before !== null && sample.at - before.at > gapMs;
      if (gap && before && before.at >= from) {
        chart.at.push((before.at + 1) / 1000);
        for (const column of [chart.tempC, chart.rhPercent, chart.degreeHours]) column.push(null);
      }
      const isDue = gap || one.done || sample.at >= shownAt + step;
      if (sample.at >= from && sample.at <= to && isDue) {
        chart.at.push(sample.at / 1000);
        chart.tempC.push(sample.value);
        chart.rhPercent.push(humidity(sample.at));
        chart.degreeHours.push(sample.at < coat.finishedAt ? null : sum.low * perHour);
        shownAt = sample.at;
      }
      before = sample;
    }
  }
  return chart;
}
