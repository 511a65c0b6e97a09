import { describe, it } from 'vitest';
import { payloadProperties } from '../fuzz/payload-properties.ts';

describe('messages from strangers, the short run', () => {
  for (const { claim, check } of payloadProperties) it(claim, () => check(1_000));
});
