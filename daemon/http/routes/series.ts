import type { FastifyInstance } from 'fastify';
import { BoardcureError } from '../../contract/problem.ts';
import type { Series, SeriesQuery } from '../../contract/series.ts';
import { calibratedFrom } from '../../rules/calibrated-from.ts';
import { gapsBetween } from '../../rules/reading-outline.ts';
import { type CurvePoint, thinOut } from '../../rules/thin-out.ts';
import { sentence } from '../../wording/english.ts';
import type { HttpParts } from '../ports.ts';
import { register } from '../register-route.ts';

interface Point extends CurvePoint {
  raw: number;
}

const hourMs = 3_600_000;
/** Readings that are looked up at once; in between, others get their turn. */
const pageSize = 20_000;
/** Moistures of a resistance that are made at once: each asks for the temperature of its time. */
const derivedPageSize = 500;
/** The most readings that one reply holds when they are not to be thinned out. */
const mostReadings = 100_000;

export function seriesRoutes(
  app: FastifyInstance,
  { view, readings, longestGapMs }: HttpParts,
): void {
  register(app, 'series', async ({ query }) => {
    const sensor = [...view.facts().sensors.values()].find((one) => one.id === query.sensor);
    if (!sensor) {
      throw new BoardcureError(
        'BC_THING_UNKNOWN',
        sentence('sensor-unheard', { sensor: query.sensor }),
      );
    }
    const outline = outlined(sensor.key, query);
    if (outline) return { sensor: sensor.id, quantity: query.quantity, ...outline };
    const points: Point[] = [];
    // Gaps are looked for before thinning: a thinned curve is no gap.
    const gaps: number[] = [];
    let count = 0;
    let before: number | null = null;
    for await (const page of pages(sensor.key, query)) {
      count += page.length;
      if (query.points === undefined && count > mostReadings) throw tooMany();
      for (const { at } of page) {
        if (before !== null && at - before > longestGapMs) gaps.push(before);
        before = at;
      }
      points.push(...(query.points === undefined ? page : thinOut(page, query.points)));
    }
    const kept = query.points === undefined ? points : thinOut(points, query.points);
    return { sensor: sensor.id, quantity: query.quantity, ...columns(kept, gaps) };
  });

  /**
   * The curve from the extremes of each hour or day, without a look at all readings; null where
   * these are too few for it, and where gaps within an hour are to be shown.
   */
  function outlined(sensorKey: number, query: SeriesQuery) {
    const { quantity, points } = query;
    if (points === undefined || longestGapMs < hourMs) return null;
    const { from, to } = span(query);
    const changes = calibratedFrom(view.facts().calibrations, sensorKey, quantity);
    const outline = readings.readingOutline?.(sensorKey, quantity, from, to, points, changes);
    if (!outline || (outline.points.length < points && !outline.stretches)) return null;
    const curve = outline.points.map((point) => asPoint({ sensorKey, quantity, ...point }));
    return columns(thinOut(curve, points), gapsBetween(outline.spans, longestGapMs));
  }

  const asPoint = (reading: Parameters<typeof readings.corrected>[0]): Point => ({
    at: reading.at,
    raw: reading.raw,
    value: readings.corrected(reading),
  });

  async function* pages(sensorKey: number, query: SeriesQuery): AsyncGenerator<Point[]> {
    const { quantity } = query;
    const { from: start, to } = span(query);
    const isDerived =
      quantity === 'wood-moisture' && readings.newestReading(sensorKey, quantity) === null;
    const size = isDerived ? derivedPageSize : pageSize;
    let from = start;
    for (;;) {
      const page = isDerived
        ? view.wood.moistureBetween(sensorKey, from, to, size)
        : readings.readingsBetween(sensorKey, quantity, from, to, size).map(asPoint);
      yield page;
      const last = page.at(-1);
      if (page.length < size || !last) return;
      from = last.at + 1;
      await new Promise((resolve) => setImmediate(resolve));
    }
  }
}

/** From when to when a series is asked for, epoch ms, both included. */
function span(query: SeriesQuery): { from: number; to: number } {
  const from = query.from === undefined ? 0 : Date.parse(query.from);
  const to = query.to === undefined ? Number.MAX_SAFE_INTEGER : Date.parse(query.to);
  if (to < from) {
    throw new BoardcureError('BC_REQUEST_INVALID', sentence('end-before-start', {}), {
      pointer: '/to',
    });
  }
  return { from, to };
}

/** @param gaps - times of the last readings before a gap, ascending */
function columns(
  points: readonly Point[],
  gaps: readonly number[],
): Omit<Series, 'sensor' | 'quantity'> {
  const series = {
    at: [] as number[],
    value: [] as (number | null)[],
    raw: [] as (number | null)[],
  };
  let next = 0;
  for (const point of points) {
    let gapAt = gaps[next];
    // One null parts the line, however many gaps lie between two points that were kept.
    const parted = gapAt !== undefined && gapAt < point.at && series.at.length > 0;
    if (parted && gapAt !== undefined) {
      series.at.push((gapAt + 1) / 1000);
      series.value.push(null);
      series.raw.push(null);
    }
    while (gapAt !== undefined && gapAt < point.at) gapAt = gaps[++next];
    series.at.push(point.at / 1000);
    series.value.push(point.value);
    series.raw.push(point.raw);
  }
  return series;
}

function tooMany(): BoardcureError {
  return new BoardcureError(
    'BC_REQUEST_INVALID',
    sentence('too-many-readings', { readings: mostReadings }),
    { pointer: '/points' },
  );
}
