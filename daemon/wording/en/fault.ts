import { faultPhrases } from '../fault-phrases.ts';

export const fault = faultPhrases({
  names: {
    silent: 'Silent',
    stuck: 'Stuck',
    jumps: 'Jumps',
    'out-of-physics': 'Not possible',
    drift: 'Drifts away',
    'pinned-humidity': 'Humidity pinned',
    'swapped-places': 'Places swapped?',
    'low-battery': 'Battery low',
    'time-wrong': 'Time wrong',
  },
  explanations: {
    silent:
      'It sends no more at its own rhythm: look at its battery, its radio and its place. What it measured before still counts; from then on there is nothing to count.',
    stuck:
      'It repeats one figure for far longer than it ever did, though there is reason to think that the air moved on: switch it off and on, or replace it.',
    jumps:
      'Its figures jump as no air does: look for a loose plug, a wet contact or a broken wire.',
    'out-of-physics':
      'It sends what no air here can be, such as the figure some sensors give when they fail: look at its wires, then replace it.',
    drift:
      'It has left the others about it, further than it ever was from them: compare them in a closed box over night, then calibrate or replace it.',
    'pinned-humidity':
      'Its humidity stands at the top of its range: it is wet or broken. Dry it in warm air; its temperature still counts.',
    'swapped-places':
      'Since a moment it reads as another sensor did, and that one as this: were they hung back the wrong way round? Only a suspicion; if so, say where they hang now.',
    'low-battery': 'Change its battery before it falls silent. Its readings still count.',
    'time-wrong':
      'The times it gives are off by the same amount all the while: set its clock, or let it send none. Cure gathered at wrong times is not counted.',
  },
  lasting: {
    minutes: (minutes) => `for ${minutes} min`,
    hours: (hours) => `for ${hours} h`,
    days: (days) => `for ${days} days`,
  },
  standing: (sensor, name, lasting) => `Sensor ${sensor}: ${name.toLowerCase()} ${lasting}.`,
  effects: {
    none: '',
    'not-counted': 'Its readings are not counted since.',
    'humidity-not-counted': 'Its humidity is not counted since.',
  },
  dampUnknown: (fault) => `How damp it is nobody knows: ${fault} Look yourself before you brush.`,
  seen: {
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
  },
});
