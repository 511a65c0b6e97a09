const decimal = /^[+-]?\d+(?:\.\d+)?$/;

/**
 * The number in a kernel attribute file.
 *
 * @param text - the whole file, a newline at its end or not; null where there is no file
 * @returns null where there is no plain decimal number
 *
 * **Source:** Linux kernel, Documentation/filesystems/sysfs.rst: one value a file, as ASCII text.
 */
export function numberInFile(text: string | null): number | null {
  const trimmed = text?.trim() ?? '';
  return decimal.test(trimmed) ? Number(trimmed) : null;
}
