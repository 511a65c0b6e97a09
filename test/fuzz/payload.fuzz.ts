import { describe, it } from 'vitest';
import { payloadProperties } from './payload-properties.ts';

const runs = Number(process.env.FUZZ_RUNS ?? 100_000);

describe(`messages from strangers, ${runs} of them`, () => {
  for (const { claim, check } of payloadProperties) it(claim, () => check(runs));
});
