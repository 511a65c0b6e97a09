/** In a full run, where there is time for them. */
const killsInFull = 100;

/**
 * How often a process is killed: as `BOARDCURE_KILLS` says, 100 times where CI is set, else as few
 * times as fit into a run that somebody waits for.
 *
 * @param few - times, of 20
 */
export function killCount(few: number): number {
  const asked = Number(process.env.BOARDCURE_KILLS ?? (process.env.CI ? killsInFull : 0));
  return asked > 0 ? Math.ceil((few * asked) / 20) : few;
}
