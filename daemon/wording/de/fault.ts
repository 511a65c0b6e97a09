import type { FaultKind } from '../../contract/sensor-fault.ts';
import type { Inner, Phrases } from '../phrase.ts';
import type { Speaker } from '../speaker.ts';
import type { FaultSentences, StandingFault } from '../subject/fault.ts';

const names: Readonly<Record<FaultKind, string>> = {
  silent: 'Stumm',
  stuck: 'Hängt fest',
  jumps: 'Springt',
  'out-of-physics': 'Nicht möglich',
  drift: 'Driftet weg',
  'pinned-humidity': 'Feuchte am Anschlag',
  'swapped-places': 'Plätze vertauscht?',
  'low-battery': 'Batterie schwach',
  'time-wrong': 'Zeit falsch',
};

const since = (minutes: number): string => {
  if (minutes < 90) return `seit ${minutes} min`;
  const hours = Math.round(minutes / 60);
  return hours < 48 ? `seit ${hours} h` : `seit ${Math.round(hours / 24)} Tagen`;
};

const notCounted = ' Seine Messwerte zählen seither nicht.';
const humidityNotCounted = ' Seine Feuchte zählt seither nicht.';

const standing =
  (kind: FaultKind, effect = '') =>
  (
    { sensor, forMinutes, seen }: StandingFault,
    _speak: Speaker,
    say: (inner: Inner) => string,
  ): string => {
    const what = typeof seen === 'string' ? seen : say(seen);
    return `Sensor ${sensor}: ${names[kind]} (${since(forMinutes)}). ${what}${effect}`;
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
    'Er sendet nicht mehr in seinem eigenen Takt: nach Batterie, Funk und Platz sehen. Was er vorher maß, zählt weiter; ab da gibt es nichts zu zählen.',
  'fault-explanation/stuck': () =>
    'Er wiederholt einen Wert viel länger als je zuvor, obwohl vieles dafür spricht, dass die Luft sich geändert hat: aus- und einschalten oder ersetzen.',
  'fault-explanation/jumps': () =>
    'Seine Werte springen, wie keine Luft es tut: nach einem losen Stecker, einem nassen Kontakt oder einem gebrochenen Draht sehen.',
  'fault-explanation/out-of-physics': () =>
    'Er sendet, was keine Luft hier sein kann, etwa den Wert, den manche Sensoren bei einem Fehler geben: nach den Drähten sehen, dann ersetzen.',
  'fault-explanation/drift': () =>
    'Er hat sich von den anderen um ihn her entfernt, weiter als je zuvor: über Nacht in einer geschlossenen Kiste vergleichen, dann kalibrieren oder ersetzen.',
  'fault-explanation/pinned-humidity': () =>
    'Seine Feuchte steht am oberen Ende des Bereichs: Er ist nass oder kaputt. In warmer Luft trocknen; seine Temperatur zählt weiter.',
  'fault-explanation/swapped-places': () =>
    'Seit einem Zeitpunkt zeigt er, was ein anderer Sensor zeigte, und jener, was dieser zeigte: Wurden sie vertauscht aufgehängt? Nur ein Verdacht; wenn ja, sagen, wo sie jetzt hängen.',
  'fault-explanation/low-battery': () =>
    'Die Batterie wechseln, bevor er verstummt. Seine Messwerte zählen weiter.',
  'fault-explanation/time-wrong': () =>
    'Die Zeiten, die er angibt, sind ständig um denselben Betrag falsch: seine Uhr stellen oder ihn keine senden lassen. Härtung zu falschen Zeiten wird nicht gezählt.',
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
    `Wie feucht es ist, weiß niemand: ${say(told.fault)} Vor dem Streichen selbst nachsehen.`,
  'seen-silent': ({ everyMs }, speak) => `Sonst sendete er im Abstand von ${speak.span(everyMs)}.`,
  'seen-stuck': ({ value, quantity }, speak) =>
    `Er zeigt die ganze Zeit ${speak.bare.quantity(value, quantity)}.`,
  'seen-jumps': ({ times, minutes }) => `Er sprang ${times}-mal innerhalb von ${minutes} min.`,
  'seen-impossible': ({ value, quantity }, speak) =>
    `Er sendete ${speak.bare.quantity(value, quantity)}.`,
  'seen-drift/above': ({ difference, quantity }, speak) =>
    `Er liegt ${speak.quantityDifference(difference, quantity, 1)} weiter über den anderen als früher.`,
  'seen-drift/below': ({ difference, quantity }, speak) =>
    `Er liegt ${speak.quantityDifference(difference, quantity, 1)} weiter unter den anderen als früher.`,
  'seen-pinned': ({ rhPercent }, speak) => `Er zeigt die ganze Zeit ${speak.humidity(rhPercent)}.`,
  'seen-pinned/others-drier': ({ rhPercent, othersPercent }, speak) =>
    `Er zeigt ${speak.humidity(rhPercent)}, andere um ihn her ${speak.humidity(othersPercent)}.`,
  'seen-swapped': ({ sensor, other }) =>
    `Seither zeigt ${sensor}, was vorher ${other} zeigte, und ${other}, was ${sensor} zeigte.`,
  'seen-battery': ({ percent }, speak) => `Es sind noch ${speak.percent(percent)} übrig.`,
  'seen-battery/empty-soon': ({ percent, days }, speak) =>
    `Es sind noch ${speak.percent(percent)} übrig; beim jetzigen Verlust ist sie in etwa ${days} Tagen leer.`,
  'seen-time/behind': ({ offMs }, speak) => `Seine Uhr geht ${speak.span(offMs)} nach.`,
  'seen-time/ahead': ({ offMs }, speak) => `Seine Uhr geht ${speak.span(offMs)} vor.`,
};
