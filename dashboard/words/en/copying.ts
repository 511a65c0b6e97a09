/** A line that is copied into another program. */
export const copying = {
  copy: 'Copy',
  /** The same for a screen reader, with what is copied. */
  copyIt: (what: string) => `Copy: ${what}`,
  copied: 'Copied.',
  selected: 'Selected: now copy it with Ctrl+C.',
};
