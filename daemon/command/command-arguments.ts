/** A command line taken apart: what the command knows itself, and what the settings are to read. */
export interface CommandArguments {
  readonly kind: 'given';
  /** What stood without a flag, in its order. */
  readonly plain: readonly string[];
  /** The command's own flags that were given, without their dashes. */
  readonly own: ReadonlySet<string>;
  /** Flags of the settings with their values, for `loadSettings`. */
  readonly settings: string[];
}

/**
 * Takes the arguments of a command apart.
 *
 * @param args - what follows the command's name
 * @param ownFlags - flags that only this command knows and that take no value, without dashes
 */
export function commandArguments(
  args: readonly string[],
  ownFlags: readonly string[],
): CommandArguments | { readonly kind: 'help' } {
  const plain: string[] = [];
  const own = new Set<string>();
  const settings: string[] = [];
  for (let index = 0; index < args.length; index++) {
    const arg = args[index] ?? '';
    if (arg === '--help' || arg === '-h') return { kind: 'help' };
    const flag = arg.startsWith('--') ? arg.slice(2) : null;
    if (flag === null) plain.push(arg);
    else if (ownFlags.includes(flag)) own.add(flag);
    else {
      settings.push(arg);
      const value = args[index + 1];
      if (!arg.includes('=') && value !== undefined && !value.startsWith('--')) {
        settings.push(value);
        index++;
      }
    }
  }
  return { kind: 'given', plain, own, settings };
}
