export const figure = (value: number, digits = 1) => value.toFixed(digits);
export const megabytes = (bytes: number) => (bytes / 1e6).toFixed(0);
/** Says what was measured, apart from what the runner says. */
export const print = (text: string) => process.stdout.write(`\n${text}\n`);
