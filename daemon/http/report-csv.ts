import type { BatchReport, Conditions } from '../contract/report.ts';
import { csvLine } from '../rules/csv-line.ts';

const head = ['at', 'kind', 'what', 'detail', 'value', 'unit'];

/**
 * A batch as a list of what happened and what was measured, one line each, in the order of time:
 * RFC 4180 with a head line. Coats carry their figures on lines of their own.
 */
export function reportCsv({ batch, coats, photos, placeNames }: BatchReport): string {
  const rows: (string | number | null)[][] = [];
  const place = (id: string) => placeNames[id] ?? id;
  rows.push([
    batch.createdAt,
    'batch',
    batch.name,
    `${batch.species}, ${batch.surface}`,
    batch.boards.count,
    'boards',
  ]);
  for (const move of batch.moves) {
    rows.push([move.at ?? batch.createdAt, 'move', place(move.placeId), null, null, null]);
  }
  for (const coat of batch.coats) {
    const { paint, rawLinseedOil, turpentine } = coat.mixture;
    rows.push([
      coat.finishedAt,
      'coat',
      coat.name,
      `${paint} paint, ${rawLinseedOil} raw linseed oil, ${turpentine} turpentine by volume; ${coat.faces.join(' ')}`,
      coat.usedL,
      'L',
    ]);
    rows.push([coat.finishedAt, 'cure', coat.name, coat.stage, coat.degreeHours, '°C·h']);
    const figures = coats.find((one) => one.coatId === coat.id);
    if (!figures) continue;
    rows.push([coat.finishedAt, 'area', coat.name, null, figures.areaM2, 'm²']);
    rows.push(...conditionRows(coat.finishedAt, coat.name, 'at the brush', figures.atTheBrush));
    rows.push(...conditionRows(coat.finishedAt, coat.name, 'first day', figures.firstDay));
    rows.push(...conditionRows(coat.finishedAt, coat.name, 'while curing', figures.whileCuring));
    for (const [gate, at] of Object.entries(figures.reached)) {
      if (at) rows.push([at, 'likely', gate, coat.name, null, null]);
    }
  }
  for (const test of batch.tests) {
    rows.push([
      test.at,
      'test',
      test.gate,
      `${test.passed ? 'passed' : 'failed'} on ${test.on}`,
      test.degreeHours,
      '°C·h',
    ]);
  }
  for (const remark of batch.remarks) {
    rows.push([remark.at, 'remark', remark.kind, remark.text, null, null]);
  }
  for (const reading of batch.handReadings) {
    for (const value of reading.values) {
      rows.push([reading.at, 'hand meter', reading.quantity, null, value, null]);
    }
  }
  for (const photo of photos) rows.push([photo.at, 'photo', photo.address, photo.text, null, null]);
  rows.sort(([a], [b]) => Date.parse(String(a)) - Date.parse(String(b)));
  return [head, ...rows].map(csvLine).join('');
}

function conditionRows(at: string, coat: string, when: string, air: Conditions) {
  const rows: (string | number | null)[][] = [];
  for (const [what, spread, unit] of [
    ['temperature', air.tempC, '°C'],
    ['humidity', air.rhPercent, '%'],
  ] as const) {
    if (spread === null) continue;
    for (const [which, value] of Object.entries(spread)) {
      rows.push([at, 'air', `${which} ${what}`, `${coat}, ${when}`, value, unit]);
    }
  }
  rows.push([at, 'air', 'hours read', `${coat}, ${when}`, air.hours, 'h']);
  return rows;
}
