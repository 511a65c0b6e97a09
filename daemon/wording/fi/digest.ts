import { weather } from '../digest-weather.ts';
import type { Inner, Phrases } from '../phrase.ts';
import type { Speaker } from '../speaker.ts';
import type { DigestSentences } from '../subject/digest.ts';
import { gateNames, gateTests, gateTo } from './gate-names.ts';

const rack = (
  { batchName, placeName, coatName }: DigestSentences['digest-rack/done'],
  say: (inner: Inner) => string,
) =>
  coatName === null
    ? `${batchName} (${placeName})`
    : `${batchName} (${placeName}), ${say(coatName).toLowerCase()}`;

const when = (at: number, today: boolean, speak: Speaker) =>
  today ? `klo ${speak.clock(at)}` : `${speak.day(at)} klo ${speak.clock(at)}`;

export const digest: Phrases<DigestSentences> = {
  'digest-title': ({ at, toFeel, ready, open }, speak) =>
    `Aamu ${speak.day(at)}: tunnusteltavia ${toFeel}, valmiita ${ready}, avoinna ${open === 0 ? 'ei mitään' : open}`,
  'digest-head/racks': () => 'Telineet ja seinät',
  'digest-head/feel': () => 'Tunnustele tänään',
  'digest-head/wrong': () => 'Mikä on vialla',
  'digest-head/brush': () => 'Maalattavaksi',
  'digest-nothing': () => 'ei mitään',
  'digest-rack/done': (told, _speak, say) => `${rack(told, say)}: ei odota mitään.`,
  'digest-rack/ready': (told, _speak, say) => `${rack(told, say)}: valmis ${gateTo[told.gate]}.`,
  'digest-rack/test': (told, _speak, say) =>
    `${rack(told, say)}: kannattaa tehdä kosketuskoe, ${gateNames[told.gate]}.`,
  'digest-rack/hold': (told, _speak, say) => {
    const held = `${rack(told, say)}: kovettunut tarpeeksi ${gateTo[told.gate]}, mutta jokin estää.`;
    return told.because === null ? held : `${held} ${say(told.because)}`;
  },
  'digest-rack/unknown': (told, _speak, say) =>
    `${rack(told, say)}: ${gateNames[told.gate]}, kukaan ei vielä osaa sanoa, milloin.`,
  'digest-rack/likely': (told, speak, say) =>
    `${rack(told, say)}: ${gateNames[told.gate]} todennäköisesti ${when(told.at, told.today, speak)}.`,
  'digest-feel': ({ batchName, gate }) => `${batchName}: ${gateTests[gate]}`,
  'digest-brush': (told, _speak, say) => weather(told, say),
  'digest-brush/stop': ({ stopAt, today, because, ...told }, speak, say) =>
    `${weather(told, say)} Lopeta viimeistään ${when(stopAt, today, speak)}. ${say(because)}`,
};
