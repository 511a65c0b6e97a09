import { weather } from '../digest-weather.ts';
import type { Inner, Phrases } from '../phrase.ts';
import type { Speaker } from '../speaker.ts';
import type { DigestSentences } from '../subject/digest.ts';
import { gateNouns, gateTests } from './gate-names.ts';

const rack = (
  { batchName, placeName, coatName }: DigestSentences['digest-rack/done'],
  say: (inner: Inner) => string,
) =>
  coatName === null
    ? `${batchName} (${placeName})`
    : `${batchName} (${placeName}), ${say(coatName)}`;

const when = (at: number, today: boolean, speak: Speaker) =>
  today ? speak.clock(at) : `${speak.day(at)} ${speak.clock(at)}`;

export const digest: Phrases<DigestSentences> = {
  'digest-title': ({ at, toFeel, ready, open }, speak) =>
    `Morgen des ${speak.day(at)}: ${toFeel} anzufassen, ${ready} bereit, ${open === 0 ? 'nichts' : open} offen`,
  'digest-head/racks': () => 'Gestelle und Hauswände',
  'digest-head/feel': () => 'Heute anfassen',
  'digest-head/wrong': () => 'Was nicht stimmt',
  'digest-head/brush': () => 'Zum Streichen',
  'digest-nothing': () => 'nichts',
  'digest-rack/done': (told, _speak, say) => `${rack(told, say)}: wartet auf nichts.`,
  'digest-rack/ready': (told, _speak, say) =>
    `${rack(told, say)}: bereit zum ${gateNouns[told.gate]}.`,
  'digest-rack/test': (told, _speak, say) =>
    `${rack(told, say)}: Eine Fingerprobe fürs ${gateNouns[told.gate]} lohnt sich.`,
  'digest-rack/hold': (told, _speak, say) => {
    const held = `${rack(told, say)}: genug gehärtet zum ${gateNouns[told.gate]}, aber gesperrt.`;
    return told.because === null ? held : `${held} ${say(told.because)}`;
  },
  'digest-rack/unknown': (told, _speak, say) =>
    `${rack(told, say)}: ${gateNouns[told.gate]}, wann, kann noch niemand sagen.`,
  'digest-rack/likely': (told, speak, say) =>
    `${rack(told, say)}: ${gateNouns[told.gate]} wahrscheinlich ${when(told.at, told.today, speak)}.`,
  'digest-feel': ({ batchName, gate }) => `${batchName}: ${gateTests[gate]}`,
  'digest-brush': (told, _speak, say) => weather(told, say),
  'digest-brush/stop': ({ stopAt, today, because, ...told }, speak, say) =>
    `${weather(told, say)} Aufhören bis ${when(stopAt, today, speak)}. ${say(because)}`,
};
