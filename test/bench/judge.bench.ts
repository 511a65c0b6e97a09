import { bench, describe } from 'vitest';
import { createShed } from '../../sensors/shed/shed.ts';
import { judgeMany } from '../judge/judge-many.ts';
import { judgeTables } from '../judge/judge-tables.ts';

/*
 * Fifty invented sheds for thirty days: half of them with two failing sensors, a third with nobody who
 * feels the boards. Fewer with `JUDGE_SHEDS` and `JUDGE_DAYS`.
 */
const count = Number(process.env.JUDGE_SHEDS ?? 50);
const days = Number(process.env.JUDGE_DAYS ?? 30);
const tasks = Array.from({ length: count }, (_, index) => {
  const seed = index + 1;
  return { seed, options: { days, faults: seed % 2 === 0 ? 2 : 0, tests: seed % 3 !== 0 } };
});

const print = (text: string) => process.stdout.write(text);
const startedAt = performance.now();
const sheds = await judgeMany(tasks, (done) => {
  if (done % 10 === 0 || done === count) print(`judged ${done} of ${count} sheds\n`);
});
const seconds = ((performance.now() - startedAt) / 1000).toFixed(0);
print(`\n${count} sheds for ${days} days, judged in ${seconds} s\n${judgeTables(sheds)}\n`);

describe('an invented shed', () => {
  const shed = createShed({ seed: 1, startAt: Date.UTC(2026, 4, 1) });
  bench('carried on by a day', () => {
    shed.advanceTo(shed.at() + 86_400_000);
  });
});
