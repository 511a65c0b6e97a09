import { readFileSync } from 'node:fs';

/**
 * The most memory that a process had in the machine at once since it began.
 *
 * @param pid - of a process on Linux
 * @returns MB (10⁶ bytes)
 */
export function peakMemoryMB(pid: number | undefined): number {
  const status = readFileSync(`/proc/${pid}/status`, 'utf8');
  const kib = /^VmHWM:\s+(\d+) kB$/m.exec(status)?.[1];
  if (kib === undefined) throw new Error('The system does not tell the peak of a process.');
  return (Number(kib) * 1024) / 1e6;
}
