import { describe, expect, it } from 'vitest';
import { newId } from '../../dashboard/new-id.ts';

// RFC 9562 (2024), section 5.7: version 7 in the seventh byte, variant 10 in the ninth.
const version7 = /^[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/;

describe('an id made on a page', () => {
  it('is a version 7 UUID, and later ones sort later', () => {
    const ids = Array.from({ length: 500 }, newId);
    for (const id of ids) expect(id).toMatch(version7);
    expect([...ids].sort()).toEqual(ids);
  });

  it('begins with its time in milliseconds', () => {
    const before = Date.now();
    const at = Number.parseInt(newId().replace(/-/g, '').slice(0, 12), 16);
    expect(at).toBeGreaterThanOrEqual(before);
    expect(at).toBeLessThanOrEqual(Date.now());
  });
});
