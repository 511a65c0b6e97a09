import { encode } from 'uqr';

/**
 * A QR code as one SVG path, drawn in modules; the quiet zone of four modules is part of it.
 *
 * @param text - what it says
 * @returns side in modules and the path of the dark ones
 */
export function qrPath(text: string): { side: number; path: string } {
  const { size, data } = encode(text, { ecc: 'M', border: 4 });
  const rows = data.map((row, y) =>
    row.map((dark, x) => (dark ? `M${x} ${y}h1v1h-1z` : '')).join(''),
  );
  return { side: size, path: rows.join('') };
}
