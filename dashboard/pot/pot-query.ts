import type { RouteSend } from '../../daemon/contract/routes.ts';

/** What the mixing bench is asked; also the address of a strip or label to print. */
export type PotQuery = RouteSend<'mixture'>['query'];

const names = [
  'areaM2',
  'spreadingM2PerL',
  'batchId',
  'coat',
  'paint',
  'rawLinseedOil',
  'turpentine',
  'lossPercent',
  'potDiameterMm',
  'potTopDiameterMm',
  'potHeightMm',
  'fillPercent',
  'paintDensityKgPerL',
] as const;

/** The part of a query that a printed sheet needs, as it stands in an address. */
export function sheetQuery(query: PotQuery): Record<string, string | number | undefined> {
  return Object.fromEntries(
    names.flatMap((name) => {
      const value = query[name];
      return value === undefined ? [] : [[name, String(value)]];
    }),
  );
}

/** The same, read back from an address; what is no name of a query is left out. */
export function queryOfSheet(given: URLSearchParams): PotQuery {
  return Object.fromEntries(
    names.flatMap((name) => {
      const value = given.get(name);
      return value === null ? [] : [[name, value]];
    }),
  ) as PotQuery;
}
