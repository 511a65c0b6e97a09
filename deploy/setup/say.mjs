/**
 * Says one line on standard error; standard output belongs to the daemon.
 *
 * @param {string} line
 */
export function say(line) {
  process.stderr.write(`boardcure: ${line}\n`);
}
