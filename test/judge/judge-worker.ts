import { type JudgedShed, type JudgeOptions, judgeShed } from './judge-shed.ts';

/** A judged shed as it crosses from one process to another. */
export type SentShed = Omit<JudgedShed, 'air'> & { air: [string, number][] };

/** Work for one process: which sheds, and how. */
export interface JudgeTask {
  readonly seed: number;
  readonly options: JudgeOptions;
}

// run as a process of its own: a task comes in, a judged shed goes out
process.on('message', (task: JudgeTask) => {
  void judgeShed(task.seed, task.options).then((shed) => {
    process.send?.({ ...shed, air: [...shed.air] });
  });
});
