/** Names that the name service of a home network gives out, and no public one. **Source:** RFC 6762, RFC 8375, ICANN resolution on .internal (2024); .lan, .home: common practice, no source. */
const localEndings = ['local', 'lan', 'home', 'home.arpa', 'internal', 'localdomain'];
const ipv4 = /^\d{1,3}(?:\.\d{1,3}){3}$/;
const ipv6 = /^\[[0-9a-f:.]+\]$/;

/**
 * Whether a request may have been meant for this daemon, by the name it was asked for under. A page
 * of another site can make its own name lead here (DNS rebinding); it cannot take an IP address or
 * a name of the local network.
 *
 * @param host - the Host header, with or without a port; undefined when there is none
 * @param own - names of the computer and those of the settings
 */
export function isOwnName(host: string | undefined, own: readonly string[]): boolean {
  // Only HTTP/1.0 leaves it out, which no browser speaks. RFC 9112, section 3.2.
  if (host === undefined || host === '') return true;
  const name = host
    .toLowerCase()
    .replace(/:\d{1,5}$/, '')
    .replace(/\.$/, '');
  if (ipv4.test(name) || ipv6.test(name)) return true;
  if (name === 'localhost' || name.endsWith('.localhost')) return true;
  return own.some((given) => {
    const mine = given.toLowerCase();
    if (name === mine) return true;
    const [first] = mine.split('.');
    return localEndings.some((ending) => name === `${first}.${ending}`);
  });
}

/** Whether the page that asks is one of this daemon; a request without an origin is of no page. */
export function isOwnOrigin(
  origin: string | undefined,
  host: string | undefined,
  asker: string | undefined,
): boolean {
  // A browser says whose page asks; another port of this computer is another site’s page.
  if (asker !== undefined && asker !== 'same-origin' && asker !== 'none') return false;
  if (origin === undefined) return true;
  const [, from] = /^https?:\/\/([^/?#@]+)$/.exec(origin.toLowerCase()) ?? [];
  return from !== undefined && from === host?.toLowerCase();
}
