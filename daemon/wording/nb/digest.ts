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
    `Morgenen ${speak.day(at)}: ${toFeel} å kjenne på, ${ready} klare, ${open === 0 ? 'ingenting' : open} åpent`,
  'digest-head/racks': () => 'Reoler og vegger',
  'digest-head/feel': () => 'Kjenn på i dag',
  'digest-head/wrong': () => 'Hva som er galt',
  'digest-head/brush': () => 'Å male',
  'digest-nothing': () => 'ingenting',
  'digest-rack/done': (told, _speak, say) => `${rack(told, say)}: venter ikke på noe.`,
  'digest-rack/ready': (told, _speak, say) =>
    `${rack(told, say)}: klart til å ${gateVerbs[told.gate]}.`,
  'digest-rack/test': (told, _speak, say) =>
    `${rack(told, say)}: verdt en følertest før du kan ${gateVerbs[told.gate]}.`,
  'digest-rack/hold': (told, _speak, say) => {
    const held = `${rack(told, say)}: herdet nok til å ${gateVerbs[told.gate]}, men noe holder det igjen.`;
    return told.because === null ? held : `${held} ${say(told.because)}`;
  },
  'digest-rack/unknown': (told, _speak, say) =>
    `${rack(told, say)}: når det går an å ${gateVerbs[told.gate]}, kan ingen si ennå.`,
  'digest-rack/likely': (told, speak, say) =>
    `${rack(told, say)}: trolig klart til å ${gateVerbs[told.gate]} ${when(told.at, told.today, speak)}.`,
  'digest-feel': ({ batchName, gate }) => `${batchName}: ${gateTests[gate]}`,
  'digest-brush': (told, _speak, say) => weather(told, say),
  'digest-brush/stop': ({ stopAt, today, because, ...told }, speak, say) =>
    `${weather(told, say)} Slutt senest ${when(stopAt, today, speak)}. ${say(because)}`,
};
