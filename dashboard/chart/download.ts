import type { Range } from './range.ts';

/** How long a file may take to be begun before its address is given up. */
const KEPT_MS = 60_000;

/** Hands a file to whoever looks: by an address of the page itself, so that no policy is in its way. */
export function save(file: Blob, name: string): void {
  const address = URL.createObjectURL(file);
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.hidden = true;
  document.body.append(link);
  link.click();
  link.remove();
  setTimeout(() => URL.revokeObjectURL(address), KEPT_MS);
}

/** “North rack 2026-05-04 to 2026-05-11.csv”, without what a file system does not take. */
export function fileName(title: string, { from, to }: Range, kind: 'csv' | 'png'): string {
  const day = (at: number) => new Date(at * 1000).toISOString().slice(0, 10);
  const plain = title
    .replace(/[\p{Cc}\\/:*?"<>|]+/gu, ' ')
    .trim()
    .slice(0, 80);
  return `${plain} ${day(from)} ${day(to)}.${kind}`;
}
