/**
 * What an authority of our own may vouch for: names that no public name service gives out and
 * addresses of local networks. **Source:** RFC 1918, RFC 3927, RFC 4193, RFC 4291; as openssl
 * writes name constraints of RFC 5280, section 4.2.1.10.
 */
export const permittedNames: readonly string[] = [
  'DNS:localhost',
  'DNS:local',
  'DNS:lan',
  'DNS:home',
  'DNS:home.arpa',
  'DNS:internal',
  'DNS:localdomain',
  'IP:127.0.0.0/255.0.0.0',
  'IP:10.0.0.0/255.0.0.0',
  'IP:172.16.0.0/255.240.0.0',
  'IP:192.168.0.0/255.255.0.0',
  'IP:169.254.0.0/255.255.0.0',
  'IP:0:0:0:0:0:0:0:1/FFFF:FFFF:FFFF:FFFF:FFFF:FFFF:FFFF:FFFF',
  'IP:FC00:0:0:0:0:0:0:0/FE00:0:0:0:0:0:0:0',
  'IP:FE80:0:0:0:0:0:0:0/FFC0:0:0:0:0:0:0:0',
];

/**
 * Names and addresses that stand in a certificate for this computer.
 *
 * @param hostName - of the computer, with or without a domain
 * @param addresses - of its network cards
 */
export function certificateNames(hostName: string, addresses: readonly string[]): string[] {
  const [short = ''] = hostName.toLowerCase().split('.');
  const isName = /^[a-z0-9](?:[a-z0-9-]{0,61}[a-z0-9])?$/.test(short) && short !== 'localhost';
  const names = isName ? ['local', 'lan', 'home', 'home.arpa'].map((end) => `${short}.${end}`) : [];
  const own = addresses.map((address) => address.replace(/%.*$/, '')).filter(isLocal);
  return [...new Set(['localhost', ...names, '127.0.0.1', '::1', ...own])];
}

const isLocal = (address: string): boolean =>
  /^(?:127\.|10\.|192\.168\.|169\.254\.|172\.(?:1[6-9]|2\d|3[01])\.)/.test(address) ||
  /^(?:f[cd]|fe[89ab])/i.test(address) ||
  address === '::1';
