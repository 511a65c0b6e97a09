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
    ? `${batchName} på ${placeName}`
    : `${batchName} på ${placeName}, ${say(coatName).toLowerCase()}`;

const when = (at: number, today: boolean, speak: Speaker) =>
  today ? `kl. ${speak.clock(at)}` : `${speak.day(at)} kl. ${speak.clock(at)}`;

export const digest: Phrases<DigestSentences> = {
  'digest-title': ({ at, toFeel, ready, open }, speak) =>
    `Morgonen ${speak.day(at)}: ${toFeel} att känna på, ${ready} klara, ${open === 0 ? 'inget' : open} öppet`,
  'digest-head/racks': () => 'Ställ och väggar',
  'digest-head/feel': () => 'Känn på i dag',
  'digest-head/wrong': () => 'Vad som är fel',
  'digest-head/brush': () => 'Att stryka',
  'digest-nothing': () => 'ingenting',
  'digest-rack/done': (told, _speak, say) => `${rack(told, say)}: väntar inte på något.`,
  'digest-rack/ready': (told, _speak, say) =>
    `${rack(told, say)}: klart att ${gateVerbs[told.gate]}.`,
  'digest-rack/test': (told, _speak, say) =>
    `${rack(told, say)}: värt ett känselprov inför att ${gateVerbs[told.gate]}.`,
  'digest-rack/hold': (told, _speak, say) => {
    const held = `${rack(told, say)}: härdat nog för att ${gateVerbs[told.gate]}, men något hindrar.`;
    return told.because === null ? held : `${held} ${say(told.because)}`;
  },
  'digest-rack/unknown': (told, _speak, say) =>
    `${rack(told, say)}: när det går att ${gateVerbs[told.gate]} kan ingen säga än.`,
  'digest-rack/likely': (told, speak, say) =>
    `${rack(told, say)}: att ${gateVerbs[told.gate]} går troligen ${when(told.at, told.today, speak)}.`,
  'digest-feel': ({ batchName, gate }) => `${batchName}: ${gateTests[gate]}`,
  'digest-brush': (told, _speak, say) => weather(told, say),
  'digest-brush/stop': ({ stopAt, today, because, ...told }, speak, say) =>
    `${weather(told, say)} Sluta senast ${when(stopAt, today, speak)}. ${say(because)}`,
};
