import { describe, it } from 'vitest';
import { ruleProperties } from '../fuzz/rule-properties.ts';

describe('rules and strange messages, the short run', () => {
  for (const { claim, check } of ruleProperties) it(claim, () => check(500));
});
