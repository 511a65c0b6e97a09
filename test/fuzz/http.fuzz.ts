import { describe, it } from 'vitest';
import { askAnything } from './http-requests.ts';

const runs = Number(process.env.FUZZ_RUNS ?? 100_000);
/** A site is begun anew after so many, before it has grown large. */
const perSite = 1000;
const sites = Array.from({ length: Math.ceil(runs / perSite) }, (_, index) => index + 1);

describe(`requests of strangers, ${runs} of them`, () => {
  it.each(sites)('the thousand number %i', () => askAnything(Math.min(perSite, runs)));
});
