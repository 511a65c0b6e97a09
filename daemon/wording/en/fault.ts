import type { FaultKind } from '../../contract/sensor-fault.ts';
import type { Inner, Phrases } from '../phrase.ts';
import type { Speaker } from '../speaker.ts';
import type { FaultSentences, StandingFault } from '../subject/fault.ts';

const names: Readonly<Record<FaultKind, string>> = {
  silent: 'Silent',
  stuck: 'Stuck',
  jumps: 'Jumps',
  'out-of-physics': 'Not possible',
  drift: 'Drifts away',
  'pinned-humidity': 'Humidity pinned',
  'swapped-places': 'Places swapped?',
  'low-battery': 'Battery low',
  'time-wrong': 'Time wrong',
};

const since = (minutes: number): string => {
  if (minutes < 90) return `for ${minutes} min`;
  const hours = Math.round(minutes / 60);
  return hours < 48 ? `for ${hours} h` : `for ${Math.round(hours / 24)} days`;
};

const notCounted = ' Its readings are not counted since.';
const humidityNotCounted = ' Its humidity is not counted since.';

const standing =
  (kind: FaultKind, effect = '') =>
  (
    { sensor, forMinutes, seen }: StandingFault,
    _speak: Speaker,
    say: (inner: Inner) => string,
  ): string => {
    const what = typeof seen === 'string' ? seen : say(seen);
    return `Sensor ${sensor}: ${names[kind].toLowerCase()} ${since(forMinutes)}. ${what}${effect}`;
  };

export const fault: Phrases<FaultSentences> = {
  'fault-name/silent': () => names.silent,
  'fault-name/stuck': () => names.stuck,
  'fault-name/jumps': () => names.jumps,
  'fault-name/out-of-physics': () => names['out-of-physics'],
  'fault-name/drift': () => names.drift,
  'fault-name/pinned-humidity': () => names['pinned-humidity'],
  'fault-name/swapped-places': () => names['swapped-places'],
  'fault-name/low-battery': () => names['low-battery'],
  'fault-name/time-wrong': () => names['time-wrong'],
  'fault-explanation/silent': () =>
    'It sends no more at its own rhythm: look at its battery, its radio and its place. What it measured before still counts; from then on there is nothing to count.',
  'fault-explanation/stuck': () =>
    'It repeats one figure for far longer than it ever did, though there is reason to think that the air moved on: switch it off and on, or replace it.',
  'fault-explanation/jumps': () =>
    'Its figures jump as no air does: look for a loose plug, a wet contact or a broken wire.',
  'fault-explanation/out-of-physics': () =>
    'It sends what no air here can be, such as the figure some sensors give when they fail: look at its wires, then replace it.',
  'fault-explanation/drift': () =>
    'It has left the others about it, further than it ever was from them: compare them in a closed box over night, then calibrate or replace it.',
  'fault-explanation/pinned-humidity': () =>
    'Its humidity stands at the top of its range: it is wet or broken. Dry it in warm air; its temperature still counts.',
  'fault-explanation/swapped-places': () =>
    'Since a moment it reads as another sensor did, and that one as this: were they hung back the wrong way round? Only a suspicion; if so, say where they hang now.',
  'fault-explanation/low-battery': () =>
    'Change its battery before it falls silent. Its readings still count.',
  'fault-explanation/time-wrong': () =>
    'The times it gives are off by the same amount all the while: set its clock, or let it send none. Cure gathered at wrong times is not counted.',
  'sensor-silent': standing('silent'),
  'sensor-stuck': standing('stuck', notCounted),
  'sensor-jumps': standing('jumps', notCounted),
  'sensor-out-of-physics': standing('out-of-physics', notCounted),
  'sensor-drift': standing('drift', notCounted),
  'sensor-pinned-humidity': standing('pinned-humidity', humidityNotCounted),
  'sensor-swapped-places': standing('swapped-places'),
  'sensor-low-battery': standing('low-battery'),
  'sensor-time-wrong': standing('time-wrong', notCounted),
  'damp-unknown': (told, _speak, say) =>
    `How damp it is nobody knows: ${say(told.fault)} Look yourself before you brush.`,
  'seen-silent': ({ everyMs }, speak) => `It used to send every ${speak.span(everyMs)}.`,
  'seen-stuck': ({ value, quantity }, speak) =>
    `It has shown ${speak.bare.quantity(value, quantity)} all the while.`,
  'seen-jumps': ({ times, minutes }) => `It jumped ${times} times within ${minutes} min.`,
  'seen-impossible': ({ value, quantity }, speak) =>
    `It sent ${speak.bare.quantity(value, quantity)}.`,
  'seen-drift/above': ({ difference, quantity }, speak) =>
    `It is ${speak.quantityDifference(difference, quantity, 1)} further above the others than it was.`,
  'seen-drift/below': ({ difference, quantity }, speak) =>
    `It is ${speak.quantityDifference(difference, quantity, 1)} further below the others than it was.`,
  'seen-pinned': ({ rhPercent }, speak) =>
    `It has shown ${speak.humidity(rhPercent)} all the while.`,
  'seen-pinned/others-drier': ({ rhPercent, othersPercent }, speak) =>
    `It shows ${speak.humidity(rhPercent)}, others about it ${speak.humidity(othersPercent)}.`,
  'seen-swapped': ({ sensor, other }) =>
    `Since then ${sensor} reads as ${other} did before, and ${other} as ${sensor} did.`,
  'seen-battery': ({ percent }, speak) => `It has ${speak.percent(percent)} left.`,
  'seen-battery/empty-soon': ({ percent, days }, speak) =>
    `It has ${speak.percent(percent)} left and loses so much that it is empty in about ${days} days.`,
  'seen-time/behind': ({ offMs }, speak) => `Its clock is ${speak.span(offMs)} behind.`,
  'seen-time/ahead': ({ offMs }, speak) => `Its clock is ${speak.span(offMs)} ahead.`,
};
