import type { Phrases } from '../phrase.ts';
import type { LockUpSentences } from '../subject/lock-up.ts';

export const lockUp: Phrases<LockUpSentences> = {
  'lock-up-title/rags': () => 'Lappen, Handschuhe, Papier, Siebreste, öliger Staub',
  'lock-up-title/vacuum-bag': () => 'Staubsauger',
  'lock-up-title/brushes': () => 'Pinsel',
  'lock-up-title/left-over-paint': () => 'Deckel und Farbreste',
  'lock-up-title/waste': () => 'Abfall',
  'lock-up-title/heater': () => 'Heizgerät',
  'lock-up-title/doors': () => 'Türen, Luft und Strom',
  'lock-up-title/night': () => 'Heute Nacht',
  'lock-up-title/children': () => 'Kinder und Tiere',
  'lock-up/rags': () =>
    'Sie erhitzen sich von selbst und können den Schuppen noch Stunden später in Brand setzen. Tränken und in einen Blecheimer mit Deckel legen, der mit Wasser gefüllt ist; oder flach und einlagig im Freien auslegen, fern von Gebäuden, bis sie steif sind, und dann in diesen Eimer. Nie zusammengeknüllt, in einer Tüte, im Auto oder drinnen.',
  'lock-up/vacuum-bag': () =>
    'Beutel oder Trommel im Freien leeren, in den Eimer mit Wasser: Schleifstaub von Ölfarbe erhitzt sich wie ein Lappen. Nie im Gerät lassen.',
  'lock-up/brushes': () =>
    'Auswischen und in rohes Leinöl hängen, über dem Bodensatz, unter einem Deckel. Vor dem nächsten Gebrauch das Öl wieder auswischen. Womit sie ausgewischt wurden, kommt zu den Lappen.',
  'lock-up/left-over-paint': () =>
    'Die Ränder abwischen und die Deckel festdrücken; eine Scheibe Kunststofffolie auf der Farbe verhindert eine Haut. Eine Haut wird vor dem Gebrauch abgehoben, nie eingerührt; sie kommt zu den Lappen.',
  'lock-up/waste': () =>
    'Flüssige Farbe, Öl und Terpentinöl sind Sondermüll: in einen beschrifteten, geschlossenen Behälter und zur Sammelstelle, nie in den Abfluss oder auf den Boden.',
  'lock-up/heater': () =>
    'Nichts mit Flamme oder Glühdraht bleibt an, solange Lösemittel aus den Brettern weicht. Kein Heizgerät anlassen, das nicht für unbeaufsichtigten Betrieb gebaut ist, und nichts Brennbares näher als anderthalb Meter daran.',
  'lock-up/doors': () =>
    'Luft durch die ersten Stunden; abends schließen, wenn es draußen feuchter ist. Licht über nassen Brettern aus, Geräte ausgesteckt, der Weg zur Tür frei.',
  'lock-up/night': () =>
    'Nach dem tiefsten Wert der Nacht sehen und nach den nassen Brettern, die er treffen kann: abdecken, heizen oder hereintragen, was geht.',
  'lock-up/children': () =>
    'Farbe, Öl und Terpentinöl sind weggeschlossen, nie in Getränkeflaschen, und niemand, der kein Etikett lesen kann, kommt an nasse Bretter.',
  'day-coated': ({ batchName }) => `Gestrichen: ${batchName}.`,
  'day-begun': ({ batchName }) => `Anstrich begonnen: ${batchName}.`,
  'day-sanded': ({ batchName }) => `Geschliffen: ${batchName}.`,
  'night-cold/wet-boards': ({ lowC, errorK, limitC }, speak) =>
    `Fällt auf etwa ${speak.temperature(lowC)} (± ${speak.temperatureDifference(errorK)}): Unter ${speak.temperature(limitC, 'as-set')} steht der Anstrich still.`,
  'night-dew/wet-boards': ({ marginK, limitK }, speak) =>
    `Kommt bis auf etwa ${speak.temperatureDifference(marginK)} über den Taupunkt; mindestens ${speak.temperatureDifference(limitK, 'as-set')} würden genügen.`,
  'night-damp/wet-boards': ({ rhPercent, limitPercent }, speak) =>
    `Die Luftfeuchte kommt auf etwa ${speak.humidity(rhPercent)}; höchstens ${speak.humidity(limitPercent, 'as-set')} würden genügen.`,
  'night-rain': ({ rainMm }, speak) => `${speak.rain(rainMm, 1)} Regen sind vorhergesagt.`,
};
