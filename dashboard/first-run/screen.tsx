import type { ComponentChildren } from 'preact';
import { useReader } from '../reader.ts';
import { firstRunAddress } from '../router.ts';
import { type FirstRunStep, firstRunSteps, neighbour } from './steps.ts';

interface ScreenProps {
  step: FirstRunStep;
  says: ComponentChildren;
  /** Whether what this screen asks for is there: then going on is the main thing to do. */
  isDone: boolean;
  /** Left out where one cannot go on without it. */
  mayPass?: boolean;
  children: ComponentChildren;
  /** What stands below the ways on: not what this screen is for. */
  below?: ComponentChildren;
}

/** One screen of the first run: one thing, and the ways on and back. */
export function Screen({ step, says, isDone, mayPass = true, children, below }: ScreenProps) {
  const { words, figures } = useReader();
  const { firstRun } = words;
  const [before, next] = [neighbour(step, -1), neighbour(step, 1)];
  const at = figures.number(firstRunSteps.indexOf(step) + 1);
  return (
    <main class="page first-run">
      <p class="first-run-step">{firstRun.step(at, figures.number(firstRunSteps.length))}</p>
      <h1>{firstRun[step].title}</h1>
      <p class="lead">{says}</p>
      <div class="first-run-body">{children}</div>
      <nav
        class="first-run-ways"
        aria-label={firstRun.step(at, figures.number(firstRunSteps.length))}
      >
        {next !== null && (isDone || mayPass) && (
          <a class={isDone ? 'button button-main' : 'button'} href={firstRunAddress(next)}>
            {isDone ? firstRun.goOn : firstRun.later}
          </a>
        )}
        {before !== null && (
          <a class="button button-quiet" href={firstRunAddress(before)}>
            {firstRun.back}
          </a>
        )}
        {next !== null && (
          <a class="first-run-leave" href="#/">
            {firstRun.leave}
          </a>
        )}
      </nav>
      {below}
    </main>
  );
}
