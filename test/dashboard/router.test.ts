import { describe, expect, it } from 'vitest';
import { batchAddress, pageOf, topicAddress } from '../../dashboard/router.ts';

describe('the address of a page', () => {
  it('is the wall when nothing else is asked for', () => {
    expect(pageOf('').kind).toBe('wall');
    expect(pageOf('#/').kind).toBe('wall');
  });

  it('leads to a batch and back', () => {
    const id = '0190a000-0000-7000-8000-000000000100';
    expect(pageOf(batchAddress(id))).toEqual({ kind: 'batch', id });
  });

  it('leads to the rule for a topic and back, whatever is in it', () => {
    for (const topic of ['farm/attic/temp', 'ü %/#+?', '/']) {
      expect(pageOf(topicAddress(topic))).toEqual({ kind: 'topics', from: topic });
    }
    expect(pageOf('#/topics')).toEqual({ kind: 'topics', from: null });
    expect(pageOf('#/topics/%')).toEqual({ kind: 'topics', from: '%' });
  });

  it('says so when there is no such page', () => {
    expect(pageOf('#/attic')).toEqual({ kind: 'unknown', path: '/attic' });
  });
});
