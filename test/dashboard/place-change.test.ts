import { describe, expect, it } from 'vitest';
import { type PlaceFields, placeChange } from '../../dashboard/setup/place-change.ts';

const opened: PlaceFields = { name: 'Room', volumeM3: 80, capacityM: null, capacityBoards: null };

describe('a place that two people change', () => {
  it('gets only what was typed here', () => {
    const typed = { name: 'Room', volumeM3: 90 };
    expect(placeChange(opened, opened, typed)).toEqual({ body: { volumeM3: 90 }, both: [] });
    const now = { ...opened, name: 'Long room' };
    expect(placeChange(opened, now, typed)).toEqual({ body: { volumeM3: 90 }, both: [] });
  });

  it('is named where both changed the same, but not where they agree', () => {
    const typed = { name: 'Large room', volumeM3: 80 };
    const now = { ...opened, name: 'Long room' };
    expect(placeChange(opened, now, typed).both).toEqual(['name']);
    expect(placeChange(opened, { ...opened, name: 'Large room' }, typed).both).toEqual([]);
  });

  it('forgets what was emptied, and sends on what is no number', () => {
    expect(placeChange(opened, opened, { volumeM3: null }).body).toEqual({ volumeM3: null });
    expect(placeChange(opened, opened, { volumeM3: Number.NaN }).body).toEqual({
      volumeM3: Number.NaN,
    });
  });
});
