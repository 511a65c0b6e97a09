import { describe, it } from 'vitest';
import { ruleProperties } from './rule-properties.ts';

const runs = Number(process.env.FUZZ_RUNS ?? 100_000);

describe(`rules and strange messages, ${runs} of them`, () => {
  for (const { claim, check } of ruleProperties) it(claim, () => check(runs));
});
