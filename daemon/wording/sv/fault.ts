import type { FaultKind } from '../../contract/sensor-fault.ts';
import type { Inner, Phrases } from '../phrase.ts';
import type { Speaker } from '../speaker.ts';
import type { FaultSentences, StandingFault } from '../subject/fault.ts';

const names: Readonly<Record<FaultKind, string>> = {
  silent: 'Tyst',
  stuck: 'Fastnat',
  jumps: 'Hoppar',
  'out-of-physics': 'Omöjligt värde',
  drift: 'Driver iväg',
  'pinned-humidity': 'Fuktigheten fastnat i topp',
  'swapped-places': 'Bytta platser?',
  'low-battery': 'Svagt batteri',
  'time-wrong': 'Fel tid',
};

const since = (minutes: number): string => {
  if (minutes < 90) return `i ${minutes} min`;
  const hours = Math.round(minutes / 60);
  return hours < 48 ? `i ${hours} h` : `i ${Math.round(hours / 24)} dygn`;
};

const notCounted = ' Dess mätvärden räknas inte sedan dess.';
const humidityNotCounted = ' Dess fuktighet räknas inte sedan dess.';

const standing =
  (kind: FaultKind, effect = '') =>
  (
    { sensor, forMinutes, seen }: StandingFault,
    _speak: Speaker,
    say: (inner: Inner) => string,
  ): string => {
    const what = typeof seen === 'string' ? seen : say(seen);
    return `Givare ${sensor}: ${names[kind].toLowerCase()} ${since(forMinutes)}. ${what}${effect}`;
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
    'Den skickar inte längre i sin egen takt: titta på batteriet, radion och platsen. Det den mätte förut räknas fortfarande; från och med då finns inget att räkna.',
  'fault-explanation/stuck': () =>
    'Den upprepar ett tal mycket längre än den någonsin gjort, fast det finns skäl att tro att luften ändrades: slå av och på den, eller byt den.',
  'fault-explanation/jumps': () =>
    'Dess tal hoppar som ingen luft gör: leta efter en lös kontakt, fukt i kontakten eller en bruten ledning.',
  'fault-explanation/out-of-physics': () =>
    'Den skickar vad ingen luft här kan vara, till exempel det tal som vissa givare ger när de går sönder: titta på ledningarna, byt den sedan.',
  'fault-explanation/drift': () =>
    'Den har glidit ifrån de andra omkring sig, längre än den någonsin varit: jämför dem i en sluten låda över natten, kalibrera eller byt den sedan.',
  'fault-explanation/pinned-humidity': () =>
    'Dess fuktighet står vid områdets övre gräns: den är våt eller trasig. Torka den i varm luft; dess temperatur räknas fortfarande.',
  'fault-explanation/swapped-places': () =>
    'Sedan en stund visar den som en annan givare gjorde, och den andra som denna: hängdes de tillbaka på varandras plats? Bara en misstanke; om det stämmer, säg var de hänger nu.',
  'fault-explanation/low-battery': () =>
    'Byt batteri innan den tystnar. Dess mätvärden räknas fortfarande.',
  'fault-explanation/time-wrong': () =>
    'Tiderna den anger är hela tiden fel lika mycket: ställ dess klocka, eller låt den inte skicka någon tid. Härdning som samlats på fel tid räknas inte.',
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
    `Hur fuktigt det är vet ingen: ${say(told.fault)} Se efter själv innan du stryker.`,
  'seen-silent': ({ everyMs }, speak) => `Den brukade skicka med ${speak.span(everyMs)} emellan.`,
  'seen-stuck': ({ value, quantity }, speak) =>
    `Den har visat ${speak.bare.quantity(value, quantity)} hela tiden.`,
  'seen-jumps': ({ times, minutes }) => `Den hoppade ${times} gånger på ${minutes} min.`,
  'seen-impossible': ({ value, quantity }, speak) =>
    `Den skickade ${speak.bare.quantity(value, quantity)}.`,
  'seen-drift/above': ({ difference, quantity }, speak) =>
    `Den ligger ${speak.quantityDifference(difference, quantity, 1)} längre över de andra än förut.`,
  'seen-drift/below': ({ difference, quantity }, speak) =>
    `Den ligger ${speak.quantityDifference(difference, quantity, 1)} längre under de andra än förut.`,
  'seen-pinned': ({ rhPercent }, speak) => `Den har visat ${speak.humidity(rhPercent)} hela tiden.`,
  'seen-pinned/others-drier': ({ rhPercent, othersPercent }, speak) =>
    `Den visar ${speak.humidity(rhPercent)}, andra omkring den ${speak.humidity(othersPercent)}.`,
  'seen-swapped': ({ sensor, other }) =>
    `Sedan dess visar ${sensor} som ${other} gjorde förut, och ${other} som ${sensor} gjorde.`,
  'seen-battery': ({ percent }, speak) => `Den har ${speak.percent(percent)} kvar.`,
  'seen-battery/empty-soon': ({ percent, days }, speak) =>
    `Den har ${speak.percent(percent)} kvar och minskar så att den är tom om ungefär ${days} dygn.`,
  'seen-time/behind': ({ offMs }, speak) => `Dess klocka går ${speak.span(offMs)} efter.`,
  'seen-time/ahead': ({ offMs }, speak) => `Dess klocka går ${speak.span(offMs)} före.`,
};
