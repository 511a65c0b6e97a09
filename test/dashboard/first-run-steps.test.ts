import { describe, expect, it } from 'vitest';
import {
  type FirstRunState,
  firstRunSteps,
  neighbour,
  stepToGoOn,
} from '../../dashboard/first-run/steps.ts';

type Place = FirstRunState['overview']['places'][number];
const place = (kind: Place['kind'], coats: (number | null)[] = []): Place =>
  ({ kind, batches: coats.map((coat) => ({ coat })) }) as unknown as Place;

const state = (has: Partial<FirstRunState['overview']>, pinSet = false, placed = false) => ({
  session: { pinSet },
  overview: { siteName: null, places: [], ...has },
  sensors: [{ placeId: placed ? 'there' : null }],
});

describe('where the first run goes on', () => {
  it('is the beginning while the daemon has nothing', () => {
    expect(stepToGoOn(state({}))).toBe('reader');
  });

  it('is after what was done last', () => {
    expect(stepToGoOn(state({}, true))).toBe('site');
    expect(stepToGoOn(state({ siteName: 'Barn' }, true))).toBe('room');
    expect(stepToGoOn(state({ places: [place('room')] }))).toBe('rack');
    expect(stepToGoOn(state({ places: [place('room'), place('rack')] }))).toBe('sensor');
    expect(stepToGoOn(state({ places: [place('wall')] }, false, true))).toBe('batch');
    expect(stepToGoOn(state({ places: [place('rack', [null])] }))).toBe('coat');
    expect(stepToGoOn(state({ places: [place('rack', [null, 0])] }))).toBe('verdict');
  });

  it('does not go back to what was passed over', () => {
    expect(stepToGoOn(state({ places: [place('rack', [null])] }, false, false))).toBe('coat');
  });

  it('has a way on and back from every screen but the ends', () => {
    expect(neighbour('reader', -1)).toBeNull();
    expect(neighbour('verdict', 1)).toBeNull();
    for (const step of firstRunSteps.slice(1)) {
      expect(neighbour(neighbour(step, -1) ?? 'verdict', 1)).toBe(step);
    }
  });
});
