import { weather } from '../digest-weather.ts';
import type { Inner, Phrases } from '../phrase.ts';
import type { Speaker } from '../speaker.ts';
import type { DigestSentences } from '../subject/digest.ts';
import { gateTests, gateVerbs } from './gate-names.ts';

const rack = (
  { batchName, placeName, coatName }: DigestSentences['digest-rack/done'],
  say: (inner: Inner) => string,
) =>
  coatName === null
    ? `${batchName} at ${placeName}`
    : `${batchName} at ${placeName}, ${say(coatName).toLowerCase()}`;

const when = (at: number, today: boolean, speak: Speaker) =>
  today ? speak.clock(at) : `${speak.day(at)} ${speak.clock(at)}`;

export const digest: Phrases<DigestSentences> = {
  'digest-title': ({ at, toFeel, ready, open }, speak) =>
    `Morning of ${speak.day(at)}: ${toFeel} to feel, ${ready} ready, ${open === 0 ? 'nothing' : open} open`,
  'digest-head/racks': () => 'Racks and walls',
  'digest-head/feel': () => 'Feel today',
  'digest-head/wrong': () => 'What is wrong',
  'digest-head/brush': () => 'To brush',
  'digest-nothing': () => 'nothing',
  'digest-rack/done': (told, _speak, say) => `${rack(told, say)}: waits for nothing.`,
  'digest-rack/ready': (told, _speak, say) =>
    `${rack(told, say)}: ready for ${gateVerbs[told.gate]}.`,
  'digest-rack/test': (told, _speak, say) =>
    `${rack(told, say)}: worth a touch test for ${gateVerbs[told.gate]}.`,
  'digest-rack/hold': (told, _speak, say) => {
    const held = `${rack(told, say)}: cured enough for ${gateVerbs[told.gate]}, but held.`;
    return told.because === null ? held : `${held} ${say(told.because)}`;
  },
  'digest-rack/unknown': (told, _speak, say) =>
    `${rack(told, say)}: ${gateVerbs[told.gate]} nobody can say yet when.`,
  'digest-rack/likely': (told, speak, say) =>
    `${rack(told, say)}: ${gateVerbs[told.gate]} likely ${when(told.at, told.today, speak)}.`,
  'digest-feel': ({ batchName, gate }) => `${batchName}: ${gateTests[gate]}`,
  'digest-brush': (told, _speak, say) => weather(told, say),
  'digest-brush/stop': ({ stopAt, today, because, ...told }, speak, say) =>
    `${weather(told, say)} Stop by ${when(stopAt, today, speak)}. ${say(because)}`,
};
