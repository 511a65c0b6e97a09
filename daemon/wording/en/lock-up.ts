import type { Phrases } from '../phrase.ts';
import type { LockUpSentences } from '../subject/lock-up.ts';

export const lockUp: Phrases<LockUpSentences> = {
  'lock-up-title/rags': () => 'Rags, gloves, paper, strainings, oily dust',
  'lock-up-title/vacuum-bag': () => 'Vacuum cleaner',
  'lock-up-title/brushes': () => 'Brushes',
  'lock-up-title/left-over-paint': () => 'Lids and left-over paint',
  'lock-up-title/waste': () => 'Waste',
  'lock-up-title/heater': () => 'Heater',
  'lock-up-title/doors': () => 'Doors, air and power',
  'lock-up-title/night': () => 'Tonight',
  'lock-up-title/children': () => 'Children and animals',
  'lock-up/rags': () =>
    'They heat up by themselves and can set the shed alight hours later. Soak them and put them in a lidded metal can filled with water; or lay them flat in a single layer outdoors, away from buildings, until they are stiff, and then into that can. Never balled, in a bag, in a car or indoors.',
  'lock-up/vacuum-bag': () =>
    'Empty its bag or drum outdoors, into the can with water: sanding dust of oil paint heats up like a rag. Never leave it in the machine.',
  'lock-up/brushes': () =>
    'Wipe them out and hang them in raw linseed oil, above the sediment, under a lid. Wipe the oil out again before the next use. What they were wiped with goes with the rags.',
  'lock-up/left-over-paint': () =>
    'Wipe the rims and press the lids down; a disc of plastic film on the paint keeps a skin away. A skin is lifted off before use, never stirred in; it goes with the rags.',
  'lock-up/waste': () =>
    'Liquid paint, oil and turpentine are hazardous waste: into a marked, closed can and to the collecting point, never down a drain or onto the ground.',
  'lock-up/heater': () =>
    'Nothing with a flame or a glowing wire stays on while solvent leaves the boards. Leave no heater on that is not made to run unattended, and nothing that burns within a metre and a half of it.',
  'lock-up/doors': () =>
    'Air through the first hours; shut up in the evening when it is wetter outside. Lights out over wet boards, tools unplugged, the way to the door free.',
  'lock-up/night': () =>
    'Look at tonight’s low, and at the wet boards it may catch: cover, heat, or carry in what can be.',
  'lock-up/children': () =>
    'Paint, oil and turpentine are locked up, never in drink bottles, and nobody who cannot read a label gets to wet boards.',
  'day-coated': ({ batchName }) => `Coated: ${batchName}.`,
  'day-begun': ({ batchName }) => `Coat begun: ${batchName}.`,
  'day-sanded': ({ batchName }) => `Sanded: ${batchName}.`,
  'night-cold/wet-boards': ({ lowC, errorK, limitC }, speak) =>
    `Falls to about ${speak.temperature(lowC)} (± ${speak.temperatureDifference(errorK)}): below ${speak.temperature(limitC, 'as-set')} the coat stands still.`,
  'night-dew/wet-boards': ({ marginK, limitK }, speak) =>
    `Comes to about ${speak.temperatureDifference(marginK)} above the dew point; at least ${speak.temperatureDifference(limitK, 'as-set')} would do.`,
  'night-damp/wet-boards': ({ rhPercent, limitPercent }, speak) =>
    `Humidity gets to about ${speak.humidity(rhPercent)}; at most ${speak.humidity(limitPercent, 'as-set')} would do.`,
  'night-rain': ({ rainMm }, speak) => `${speak.rain(rainMm, 1)} of rain are forecast.`,
};
