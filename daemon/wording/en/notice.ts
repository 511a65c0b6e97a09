import type { Phrases } from '../phrase.ts';
import type { NoticeSentences } from '../subject/notice.ts';
import { gateVerbs } from './gate-names.ts';

export const notice: Phrases<NoticeSentences> = {
  'notice-title/rags': () => 'Oily rags',
  'notice-title/vapour': () => 'Solvent in the air',
  'notice-title/overheating': () => 'Too hot',
  'notice-title/place-silent': () => 'No readings',
  'notice-title/batch-without-air': () => 'Nothing is counted',
  'notice-title/sensor-fault': () => 'A sensor to look at',
  'notice-title/gate-ready': () => 'Cured enough',
  'notice-title/look-again': () => 'Look what still shines',
  'notice-title/mounting-open': () => 'Cuts and nail heads to prime',
  'notice-title/sensor-unplaced': () => 'A sensor without a place',
  'sensor-unplaced': ({ sensor }) =>
    `Sensor ${sensor} sends readings but has no place yet: say where it hangs.`,
  'sensor-fault': ({ faults }, _speak, say) => faults.map(say).join(' '),
  'place-silent': ({ placeName }) =>
    `${placeName}: silent for hours. Look at the sensor there; cure is not counted meanwhile.`,
  'batch-without-air': ({ batchName, placeName }) =>
    `${batchName}: no sensor reads the air at ${placeName}, so nothing can be counted.`,
  'look-again': ({ batchName, placeName, look }, _speak, say) =>
    `${batchName} at ${placeName}: ${say(look)}`,
  'mounting-open': ({ batchName, placeName }) =>
    `${batchName} went up at ${placeName}: not all is ticked that is primed the same day.`,
  'gate-ready': ({ batchName, placeName, gate }) =>
    `${batchName} at ${placeName}: cured enough for ${gateVerbs[gate]}.`,
  vapour: ({ placeName, nowPpm, limitPpm }, speak) =>
    `${placeName}: about ${speak.concentration(nowPpm)} of turpentine in the air by estimate, more near the boards; the limit here is ${speak.concentration(limitPpm, 'as-set')}. Open up, stay out, no flame, no spark, no glowing heater. This is no gas alarm.`,
  overheating: ({ placeName, tempC }, speak) =>
    `${placeName} is at ${speak.temperature(tempC, 0)}. Look from outside first: smoke, the heater, oily rags that heat up by themselves. Where there is smoke stay out and call the fire service. This is no fire alarm.`,
  rags: () =>
    'Oily rags heat up by themselves and can catch fire: under water in a lidded metal can, or flat in a single layer outdoors, away from buildings, until stiff and then into that can. Never balled, in a bag, in a car or indoors. Tick it on the lock-up list. Local rules come first.',
  'message-title': ({ title, again }, _speak, say) =>
    again ? `${say(title)}, told again` : say(title),
  'message-title/held-back': ({ notices }) =>
    `${notices} notices that were held back over the quiet hours`,
  'message-title/nothing': () => 'Nothing to tell',
  'message-entry': ({ text, at }, speak) => `${text} (${speak.day(at)} ${speak.clock(at)})`,
  'message-entry/over': ({ text, at, overAt }, speak) =>
    `${text} (${speak.day(at)} ${speak.clock(at)}, over since ${speak.clock(overAt)})`,
};
