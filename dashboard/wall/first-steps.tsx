import type { Overview } from '../../daemon/contract/overview.ts';

/** What an empty wall says: the way to the first verdict. */
export function FirstSteps({ overview }: { overview: Overview }) {
  const sensors =
    overview.unplacedSensors > 0
      ? `${overview.unplacedSensors} ${overview.unplacedSensors === 1 ? 'sensor sends' : 'sensors send'} already and ${overview.unplacedSensors === 1 ? 'waits' : 'wait'} to be placed.`
      : 'A sensor shows up there by itself with its first reading.';
  return (
    <main class="page first-steps">
      <h1>The wall is bare</h1>
      <ol>
        <li>Make the places: a room, and the racks in it.</li>
        <li>Say where each sensor hangs. {sensors}</li>
        <li>Start a batch and record its first coat.</li>
      </ol>
      <p>
        <a class="button" href="#/setup">
          Set up
        </a>
      </p>
    </main>
  );
}
