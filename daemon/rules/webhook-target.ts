import { addressFaults } from '../wording/en/delivery.ts';
import type { AddressFault } from '../wording/subject/delivery.ts';

/*
 * Where a webhook may go. Only the owner’s settings file names it, so a device of the own network or
 * this computer itself is a fair target; what is refused is what nobody means: the link-local
 * addresses, where the secrets of hosted machines are handed out, and what is no single host.
 */

/** Addresses at which hosted machines tell their secrets, outside of the link-local range. From memory. */
const metadataHosts = ['metadata', '100.100.100.200', 'fd00:ec2::254'];

const ip4 = /^(?:\d{1,3}\.){3}\d{1,3}$/;

/**
 * Why a webhook may not go to an address.
 *
 * @param address - IPv4 or IPv6 address as a resolver gives it, without brackets
 * @returns null where it may
 *
 * **Source:** RFC 6890 tables of special-purpose addresses; RFC 4291, section 2.5.5.2, for IPv4
 * within IPv6.
 */
export function addressFault(address: string): AddressFault | null {
  const plain = address.toLowerCase().replace(/%.*$/, '');
  if (metadataHosts.includes(plain)) return 'secrets';
  if (ip4.test(plain)) return ip4Fault(plain.split('.').map(Number));
  const groups = ip6Groups(plain);
  if (groups === null) return 'not-ip';
  const [first = 0, second = 0] = groups;
  const leadingZeros = groups.slice(0, 5).every((group) => group === 0);
  const isMapped = leadingZeros && groups[5] === 0xffff;
  const isNat64 = first === 0x64 && second === 0xff9b;
  if (isMapped || isNat64) {
    const [high = 0, low = 0] = groups.slice(6);
    return ip4Fault([high >> 8, high & 255, low >> 8, low & 255]);
  }
  if (groups.every((group) => group === 0)) return 'no-host';
  if ((first & 0xffc0) === 0xfe80) return 'link-local';
  if ((first & 0xff00) === 0xff00) return 'multicast';
  return null;
}

function ip4Fault([a = 256, b = 256, c = 256, d = 256]: number[]): AddressFault | null {
  if ([a, b, c, d].some((part) => part > 255)) return 'not-ip';
  if (a === 169 && b === 254) return 'link-local';
  if (a === 0) return 'no-host';
  if (a >= 224) return 'reserved';
  if (a === 100 && b === 100 && c === 100 && d === 200) {
    return 'secrets';
  }
  return null;
}

/** The eight groups of an IPv6 address; null where it is none. */
function ip6Groups(text: string): number[] | null {
  const dotted = /^(.*:)((?:\d{1,3}\.){3}\d{1,3})$/.exec(text);
  if (dotted?.[2] !== undefined) {
    const [a = 0, b = 0, c = 0, d = 0] = dotted[2].split('.').map(Number);
    const hex = (high: number, low: number) => (256 * high + low).toString(16);
    return ip6Groups(`${dotted[1]}${hex(a, b)}:${hex(c, d)}`);
  }
  const halves = text.split('::');
  if (halves.length > 2) return null;
  const [left = [], right = []] = halves.map((half) => (half === '' ? [] : half.split(':')));
  const missing = 8 - left.length - right.length;
  if (halves.length === 2 ? missing < 1 : missing !== 0) return null;
  const groups = [...left, ...Array.from({ length: halves.length === 2 ? missing : 0 }, () => '0')];
  const all = [...groups, ...right];
  if (!all.every((group) => /^[0-9a-f]{1,4}$/.test(group))) return null;
  return all.map((group) => Number.parseInt(group, 16));
}

/**
 * Why a webhook may not go to a URL, as far as the URL tells it; the address that its name leads to
 * is looked at again at every connection.
 *
 * @returns the reason as a sentence; null where it may
 */
export function webhookRefusal(url: string): string | null {
  const match =
    /^([a-z][a-z0-9+.-]*):\/\/(?:([^/?#]*)@)?(\[[^\]]+\]|[^/?#:]*)(?::\d+)?(?:[/?#]|$)/i.exec(url);
  if (!match) return 'It is no URL like https://host/path.';
  const [, scheme = '', user, host = ''] = match;
  if (!/^https?$/i.test(scheme)) return `It begins with ${scheme}:, but must with http: or https:.`;
  if (user !== undefined) return 'It holds a name or password; use notices.webhook.secret instead.';
  if (host === '') return 'It names no host.';
  const name = host
    .replace(/^\[|\]$/g, '')
    .replace(/\.$/, '')
    .toLowerCase();
  if (metadataHosts.includes(name)) {
    return `It leads to ${name}, where hosted machines hand out their secrets.`;
  }
  if (!ip4.test(name) && !name.includes(':')) return null;
  const fault = addressFault(name);
  return fault === null ? null : `It leads to ${name}: ${addressFaults[fault]}.`;
}
