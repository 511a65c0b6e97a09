import { describe, expect, it } from 'vitest';
import { addressGroup } from '../../daemon/rules/address-group.ts';
import { isOwnName, isOwnOrigin } from '../../daemon/rules/site-name.ts';

const own = ['shed-pc', 'boards.example'];

describe('a name that the pages are asked for under', () => {
  it.each([
    'localhost',
    'LOCALHOST:8080',
    'shed-pc',
    'Shed-PC:8080',
    'shed-pc.local',
    'shed-pc.local.:8080',
    'shed-pc.home.arpa',
    'boards.example',
    '192.168.1.5:8080',
    '[fe80::1]:8080',
    '[::1]',
    undefined,
  ])('%s is ours', (host) => expect(isOwnName(host, own)).toBe(true));

  it.each([
    'evil.example',
    'localhost.evil.example',
    'shed-pc.evil.example',
    'shed-pc.local.evil.example',
    '192.168.1.5.evil.example',
    'boards.example.evil',
    'localhost:8080@evil.example',
    'evil.example:80:8080',
    'xlocalhost',
  ])('%s is not', (host) => expect(isOwnName(host, own)).toBe(false));
});

describe('a page that asks', () => {
  const host = 'shed-pc:8080';

  it.each([
    [undefined, undefined],
    ['http://shed-pc:8080', undefined],
    ['https://shed-pc:8080', 'same-origin'],
    [undefined, 'none'],
  ])('of %s, called %s, is one of ours', (origin, asker) => {
    expect(isOwnOrigin(origin, host, asker)).toBe(true);
  });

  it.each([
    ['http://evil.example', undefined],
    ['http://shed-pc:8081', undefined],
    ['http://shed-pc:8080.evil.example', undefined],
    ['http://evil@shed-pc:8080', undefined],
    ['null', undefined],
    ['', undefined],
    ['http://shed-pc:8080', 'same-site'],
    [undefined, 'cross-site'],
  ])('of %s, called %s, is not', (origin, asker) => {
    expect(isOwnOrigin(origin, host, asker)).toBe(false);
  });
});

describe('whom an address is counted for', () => {
  it.each([
    ['192.168.1.20', '192.168.1.20'],
    ['::ffff:192.168.1.20', '192.168.1.20'],
    ['fe80::1%eth0', 'fe80:0:0:0::/64'],
    ['2001:db8:0:1:a:b:c:d', '2001:db8:0:1::/64'],
    ['2001:0db8::1:0:0:0:1', '2001:db8:0:1::/64'],
    ['::1', '0:0:0:0::/64'],
  ])('%s for %s', (address, group) => expect(addressGroup(address)).toBe(group));
});
