import { describe, expect, it } from 'vitest';
import { isJsonObject, member, parsedJson } from '../../sensors/payload/json.ts';

describe('JSON from strangers', () => {
  it('has only the members that were sent', () => {
    const json = JSON.parse('{"__proto__":{"value":5},"v":1,"u":null}');
    expect(member(json, 'v')).toBe(1);
    expect(member(json, 'value')).toBeUndefined();
    expect(member(json, 'toString')).toBeUndefined();
    expect(member(json, 'u')).toBeUndefined();
  });

  it('is an object only when it has members', () => {
    expect([{}, [], null, 1, 'x'].map(isJsonObject)).toEqual([true, false, false, false, false]);
  });

  it('says when the trouble is a number that JSON does not know', () => {
    for (const text of ['{"value":NaN}', '[{"v": -Infinity}]', '[nan]']) {
      expect(parsedJson(text)).toMatchObject({
        refusal: { detail: expect.stringContaining('NaN') },
      });
    }
    expect(parsedJson('{"value":21.5')).toMatchObject({
      refusal: { code: 'payload-not-json', detail: expect.stringContaining('closed') },
    });
  });
});
