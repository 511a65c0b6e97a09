import type { Quantity } from '../../contract/quantity.ts';
import type { Phrases } from '../phrase.ts';
import type { DetailSentences, Thing } from '../subject/detail.ts';
import { names } from './thing-names.ts';

/** Things in the partitive, as a sentence has them that says that one is not there. */
const things: Readonly<Record<Thing, string>> = {
  place: 'paikkaa',
  batch: 'erää',
  'coating-plan': 'maalaussuunnitelmaa',
  tin: 'purkkia',
  device: 'laitetta',
  calibration: 'kalibrointia',
  notice: 'ilmoitusta',
  'topic-rule': 'aihesääntöä',
};

const sizes = { lengthMm: 'pituuden', widthMm: 'leveyden', thicknessMm: 'paksuuden' } as const;

type State = NonNullable<DetailSentences['unlike/state']['ours']>;

const states: Readonly<Record<State, string>> = {
  new: 'uusi',
  weathered: 'harmaantunut',
  painted: 'maalattu aiemmin',
  unknown: 'ei tiedetä',
};

const state = (told: State | null) => (told === null ? 'ei kerrottu' : states[told]);

/** Quantities as what is measured: not “battery”, but what is left in it. */
export const quantityNames: Readonly<Record<Quantity, string>> = {
  ...names.quantities,
  'wood-resistance': 'piikkien välinen vastus',
  battery: 'pariston varaus',
};

export const detail: Phrases<DetailSentences> = {
  'no-such-thing': ({ thing, id }) => `Ei ole ${things[thing]}, jonka tunnus on ${id}.`,
  'time-too-early': ({ at, earliestAt }, speak) =>
    `Aika ${speak.moment(at)} on aikaisempi kuin ${speak.moment(earliestAt)}; tarkista vuosi.`,
  'time-to-come': ({ at, now }, speak) =>
    `Aika ${speak.moment(at)} on vielä edessä; täällä on nyt ${speak.moment(now)}.`,
  'end-before-start': () => 'Loppu on ennen alkua.',
  'place-not-within': ({ kind, within }) =>
    `Paikka ei voi olla toisen sisällä näin: ${names.placeKinds[kind]}, sisällä: ${names.placeKinds[within]}.`,
  'no-place-to-coat': () =>
    'Vielä ei ole paikkaa, jossa lautoja voisi maalata; tee ensin huone tai teline.',
  'no-such-coat': ({ planName, coats, coat }) =>
    `Suunnitelman ”${planName}” kerrosten määrä on ${coats}, laskettuna nollasta; kerrosta ${coat} ei ole.`,
  'no-such-coat/in-batch': ({ id }) => `Tällä erällä ei ole kerrosta, jonka tunnus on ${id}.`,
  'no-such-coat/on-its-way': ({ id }) =>
    `Tällä erällä ei ole kesken kerrosta, jonka tunnus on ${id}.`,
  'coat-begun-after': () => 'Kerros ei voi alkaa valmistumisensa jälkeen.',
  'coat-out-of-order': ({ coat, finishedAt }, speak) =>
    `Kerros ${coat} valmistui ${speak.moment(finishedAt)}, mikä on tähän nähden väärällä puolella.`,
  'coat-recorded': ({ coat }) =>
    `Tämän erän kerros ${coat} on jo kirjattu; peru se ensin, jos haluat muuttaa sitä.`,
  'coat-on-already': ({ number }) => `Tämän erän kerros ${number} on jo maalattu.`,
  'coat-begun-already': ({ number }) =>
    `Tämän erän kerros ${number} on aloitettu mutta ei valmis: tee se valmiiksi tai luovu siitä ensin.`,
  'coat-ended-already': () => 'Tämä kerros on jo päätetty.',
  'coat-of-origin': ({ batchName }) =>
    `Tämä kerros maalattiin, kun laudat olivat osa erää ”${batchName}”: peru se siellä.`,
  'no-coat-by-then': ({ at }, speak) =>
    `Yksikään tämän erän kerros ei ollut valmis vielä ${speak.moment(at)}: kirjaa kerros ensin.`,
  'batch-without-coat': ({ batchName }) => `Erällä ”${batchName}” ei ole sellaista kerrosta.`,
  'plan-too-short': ({ number, planName, coats }) =>
    `Kerros ${number} on jo maalattu, ja suunnitelman ”${planName}” kerrosten määrä on vain ${coats}.`,
  'plan-changed': ({ version }) =>
    `Tätä suunnitelmaa on välillä muutettu: uusin versio on ${version}. Muuta sitä.`,
  'no-default-plan': ({ surface }) =>
    `Tälle pinnalle ei ole oletussuunnitelmaa: ${names.surfaces[surface]}. Anna planId.`,
  'no-batch-like-it': ({ field }) =>
    `Vielä ei ole erää, josta voisi ottaa tiedon (${sizes[field]}); anna ${field}.`,
  'figure-impossible': ({ value, quantity, low, high }, speak) =>
    `${speak.quantity(value, quantity)} ei ole mahdollinen: ${quantityNames[quantity]} on ${speak.bare.quantity(low, quantity)} – ${speak.quantity(high, quantity)}.`,
  'batch-closed': ({ batchName }) => `Erä ”${batchName}” on päätetty.`,
  'boards-went-on': ({ batchName }) =>
    `Erän ”${batchName}” laudat liitettiin toiseen erään: erota ne siellä.`,
  'merge-itself': () => 'Erää ei voi yhdistää itseensä.',
  'merge-later-coat': ({ batchName, number, at }, speak) =>
    `Erä ”${batchName}” sai kerroksen ${number} vasta tämän jälkeen: ${speak.moment(at)}.`,
  'boards-unlike': ({ differences }, _speak, say) =>
    `Nämä laudat eivät ole samanlaisia. Eroja: ${differences.map(say).join('; ')}.`,
  'unlike/timber': ({ ours, theirs }) =>
    `puulaji (${names.species[ours]}, ${names.species[theirs]})`,
  'unlike/surface': ({ ours, theirs }) =>
    `pinta (${names.surfaces[ours]}, ${names.surfaces[theirs]})`,
  'unlike/length': ({ oursMm, theirsMm }, speak) =>
    `pituus (${speak.bare.length(oursMm)} ja ${speak.length(theirsMm)})`,
  'unlike/width': ({ oursMm, theirsMm }, speak) =>
    `leveys (${speak.bare.length(oursMm)} ja ${speak.length(theirsMm)})`,
  'unlike/thickness': ({ oursMm, theirsMm }, speak) =>
    `paksuus (${speak.bare.length(oursMm)} ja ${speak.length(theirsMm)})`,
  'unlike/state': ({ ours, theirs }) => `tila ennen maalausta (${state(ours)}, ${state(theirs)})`,
  'unlike/plan': () => 'maalaussuunnitelma tai sen versio',
  'unlike/coats': ({ ours, theirs }) => `maalatut kerrokset (${ours} ja ${theirs})`,
  'unlike/mixture': ({ number }) => `seos, kerros ${number}`,
  'unlike/colour': ({ number }) => `väri, kerros ${number}`,
  'unlike/faces': ({ number }) => `sivut, kerros ${number}`,
  'split-too-many': ({ batchName, left, boards }) =>
    `Erässä ”${batchName}” on erotettavia lautoja ${left}; niin monta kuin ${boards} ei voi lähteä, kun vähintään yhden pitää jäädä.`,
  'no-move-in-batch': ({ id }) => `Tällä erällä ei ole siirtoa, jonka tunnus on ${id}.`,
  'move-not-to-wall': () => 'Tämä siirto ei vienyt seinään.',
  'no-photo-in-batch': ({ id }) => `Tällä erällä ei ole kuvaa, jonka tunnus on ${id}.`,
  'no-photo': () => 'Tällä tunnuksella ei ole kuvaa.',
  'no-picture': () => 'Tämä ei ole kuva, jonka voi tallentaa: se ei ala kuten JPEG, PNG tai WebP.',
  'pictures-full': ({ mostMiB }) =>
    `Tämän paikan kuvat vievät ${mostMiB} MiB, niin paljon kuin ne saavat (asetus photos.maxMiB). Poista ensin joitakin.`,
  'sensor-unheard': ({ sensor }) => `Anturia ${sensor} ei ole vielä kuultu.`,
  'sensor-unheard/yet-to-come': ({ sensor }) =>
    `Anturia ${sensor} ei ole vielä kuultu; se on olemassa ensimmäisestä lukemastaan alkaen.`,
  'sensor-said-nothing': ({ minutes, at }, speak) =>
    `Anturi ei lähettänyt mitään ${minutes} minuutin sisällä tästä: ${speak.moment(at)}. Mittaa uudelleen, kun se lähettää, tai kerro, mitä se näytti.`,
  'from-needs-place': () => 'Kenttä from tarvitsee placeId:n, jota se koskee.',
  'calibration-withdrawn': ({ id }) => `Kalibrointi ${id} on peruttu; kirjaa sen sijaan uusi.`,
  'too-many-readings': ({ readings }) =>
    `Lukemia on enemmän kuin ${readings}: pyydä lyhyempää aikaa, tai harvenna niitä antamalla points.`,
  'too-many-rules': ({ rules }) =>
    `Aihesääntöjä on ${rules}, niin monta kuin sallitaan; poista yksi, tai suurenna asetusta discovery.maxRules.`,
  'comparison-too-long': ({ hours }, speak) =>
    `Kerralla verrataan enintään ${speak.number(hours)} h: yö riittää.`,
  'two-sensors-at-least': () => 'Nimeä vähintään kaksi eri anturia.',
  'no-offsets-offered': () =>
    'Tämä vertailu ei ehdota siirtymiä: katso, mitä se sanoo kustakin suureesta.',
  'could-not-answer': () => 'Taustaohjelma ei voinut vastata tähän pyyntöön.',
};
