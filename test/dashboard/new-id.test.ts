import { describe, expect, it } from 'vitest';
import { newId } from '../../dashboard/new-id.ts';

// RFC 9562 (2024), section 5.4: version 4 in the seventh byte, variant 10 in the ninth.
const version4 = /^[0-9a-f]{8}-[0-9a-f]{4}-4[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/;

describe('an id made on a page', () => {
  it('is a version 4 UUID also where the browser makes none itself', () => {
    const plain = { getRandomValues: (bytes: Uint8Array<ArrayBuffer>) => bytes.fill(0xff) };
    expect(newId(plain)).toBe('ffffffff-ffff-4fff-bfff-ffffffffffff');
    expect(newId(plain)).toMatch(version4);
    expect(newId()).toMatch(version4);
  });
});
