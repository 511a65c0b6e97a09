import { describe, expect, it } from 'vitest';
import { linesOf } from '../../daemon/settings/file-lines.ts';

const text = `site = "shed" # line 1

[http]
port = 1
tls.cert = "a"
note = """
two
lines"""

[[webhooks]]
url = "a"
[[webhooks]]
url = "b"
[cure]
limits = { low = 1, high = [1,
  2] }
["odd name"]
'in.quotes' = 1
`;

describe('where a setting stands in its file', () => {
  it.each([
    [['site'], 1],
    [['http'], 3],
    [['http', 'port'], 4],
    [['http', 'tls', 'cert'], 5],
    [['http', 'note'], 6],
    [['webhooks', 0, 'url'], 11],
    [['webhooks', 1], 12],
    [['webhooks', 1, 'url'], 13],
    [['cure', 'limits', 'high', 1], 16],
    [['odd name', 'in.quotes'], 18],
  ])('%j: line %i', (path, line) => {
    expect(linesOf(text)(path)).toBe(line);
  });

  it('is that of its section where it is missing, and nowhere where that is missing too', () => {
    expect(linesOf(text)(['http', 'host'])).toBe(3);
    expect(linesOf(text)(['mqtt', 'port'])).toBeNull();
    expect(linesOf(text)([])).toBeNull();
  });
});
