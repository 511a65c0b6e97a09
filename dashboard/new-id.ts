/** The part of the browser’s `crypto` that is needed. */
interface RandomSource {
  randomUUID?: () => string;
  getRandomValues(bytes: Uint8Array<ArrayBuffer>): Uint8Array;
}

/**
 * A fresh UUID (version 4). `randomUUID` is missing where the page came over plain HTTP from
 * another machine, so the same is then made from random bytes.
 *
 * **Source:** RFC 9562 (2024), section 5.4.
 */
export function newId(random: RandomSource = crypto): string {
  if (typeof random.randomUUID === 'function') return random.randomUUID();
  const bytes = random.getRandomValues(new Uint8Array(16));
  bytes[6] = ((bytes[6] ?? 0) & 0x0f) | 0x40;
  bytes[8] = ((bytes[8] ?? 0) & 0x3f) | 0x80;
  const hex = [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('');
  return [
    hex.slice(0, 8),
    hex.slice(8, 12),
    hex.slice(12, 16),
    hex.slice(16, 20),
    hex.slice(20),
  ].join('-');
}
