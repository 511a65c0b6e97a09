/**
 * Whom an address is counted for: an IPv4 address for itself, an IPv6 address for its network,
 * since one device picks among all of a /64 as it likes. **Source:** RFC 8981, section 3.
 */
export function addressGroup(address: string): string {
  const bare = address.toLowerCase().replace(/%.*$/, '');
  const mapped = /^::ffff:(\d{1,3}(?:\.\d{1,3}){3})$/.exec(bare);
  if (mapped?.[1] !== undefined) return mapped[1];
  if (!bare.includes(':')) return bare;
  const [head = '', tail] = bare.split('::');
  const left = head === '' ? [] : head.split(':');
  const right = tail === undefined || tail === '' ? [] : tail.split(':');
  const missing = Math.max(0, 8 - left.length - right.length);
  const all = tail === undefined ? left : [...left, ...Array(missing).fill('0'), ...right];
  return `${all
    .slice(0, 4)
    .map((part) => part.replace(/^0+(?=.)/, ''))
    .join(':')}::/64`;
}
