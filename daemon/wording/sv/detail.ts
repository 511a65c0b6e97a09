import type { Quantity } from '../../contract/quantity.ts';
import type { StateBefore } from '../../contract/timber.ts';
import type { Phrases } from '../phrase.ts';
import type { DetailSentences, Thing } from '../subject/detail.ts';
import { names } from './thing-names.ts';

/** With the word for “none” that goes with its gender. */
const noThing: Readonly<Record<Thing, string>> = {
  place: 'ingen plats',
  batch: 'inget parti',
  'coating-plan': 'ingen strykplan',
  tin: 'ingen burk',
  device: 'ingen enhet',
  calibration: 'ingen kalibrering',
  notice: 'inget besked',
  'topic-rule': 'ingen ämnesregel',
};

const states: Readonly<Record<StateBefore, string>> = {
  new: 'nytt',
  weathered: 'grånat',
  painted: 'målat förut',
  unknown: 'okänt',
};

const stateOf = (state: StateBefore | null) => (state === null ? 'inte sagt' : states[state]);

/** Quantities as what is measured: not “battery”, but what is left in it. */
export const quantityNames: Readonly<Record<Quantity, string>> = {
  ...names.quantities,
  'wood-resistance': 'resistans mellan stiften',
  battery: 'batteriets laddning',
};

export const detail: Phrases<DetailSentences> = {
  'no-such-thing': ({ thing, id }) => `Det finns ${noThing[thing]} med id ${id}.`,
  'time-too-early': ({ at, earliestAt }, speak) =>
    `Tiden ${speak.moment(at)} ligger före ${speak.moment(earliestAt)}; kontrollera året.`,
  'time-to-come': ({ at, now }, speak) =>
    `Tiden ${speak.moment(at)} har inte kommit än; här är det ${speak.moment(now)}.`,
  'end-before-start': () => 'Slutet ligger före början.',
  'place-not-within': ({ kind, within }) =>
    `En plats av slaget ${names.placeKinds[kind]} kan inte ligga i en av slaget ${names.placeKinds[within]}.`,
  'no-place-to-coat': () =>
    'Det finns ingen plats än där brädor kan strykas; lägg upp ett rum eller ett ställ först.',
  'no-such-coat': ({ planName, coats, coat }) =>
    `Planen ”${planName}” har ${coats} strykningar, räknade från 0; det finns ingen strykning ${coat}.`,
  'no-such-coat/in-batch': ({ id }) => `Partiet har ingen strykning med id ${id}.`,
  'no-such-coat/on-its-way': ({ id }) => `Partiet har ingen pågående strykning med id ${id}.`,
  'coat-begun-after': () => 'Strykningen kan inte börja efter att den blev klar.',
  'coat-out-of-order': ({ coat, finishedAt }, speak) =>
    `Strykning ${coat} blev klar ${speak.moment(finishedAt)}, och det är på fel sida om den här.`,
  'coat-recorded': ({ coat }) =>
    `Strykning ${coat} av det här partiet är redan antecknad; ta tillbaka den först för att ändra.`,
  'coat-on-already': ({ number }) => `Strykning ${number} av det här partiet är redan lagd.`,
  'coat-begun-already': ({ number }) =>
    `Strykning ${number} av det här partiet är börjad och inte klar: gör den klar eller avbryt den först.`,
  'coat-ended-already': () => 'Den här strykningen avslutades tidigare.',
  'coat-of-origin': ({ batchName }) =>
    `Den här strykningen lades medan brädorna hörde till ”${batchName}”: ta tillbaka den där.`,
  'no-coat-by-then': ({ at }, speak) =>
    `Ingen strykning av partiet var klar ${speak.moment(at)}: anteckna strykningen först.`,
  'batch-without-coat': ({ batchName }) => `”${batchName}” har ingen sådan strykning.`,
  'plan-too-short': ({ number, planName, coats }) =>
    `Strykning ${number} är redan lagd, och planen ”${planName}” har bara ${coats}.`,
  'plan-changed': ({ version }) =>
    `Planen har ändrats under tiden: dess nyaste version är ${version}. Ändra den.`,
  'no-default-plan': ({ surface }) =>
    `Det finns ingen vanlig plan för ${names.surfaces[surface]} yta: ange planId.`,
  'no-batch-like-it': ({ field }) => `Det finns inget parti än vars ${field} kan tas; ange det.`,
  'figure-impossible': ({ value, quantity, low, high }, speak) =>
    `${speak.quantity(value, quantity)} ligger utanför vad ${quantityNames[quantity]} kan vara (${speak.bare.quantity(low, quantity)} till ${speak.quantity(high, quantity)}).`,
  'batch-closed': ({ batchName }) => `Partiet ”${batchName}” är avslutat.`,
  'boards-went-on': ({ batchName }) =>
    `Brädorna i ”${batchName}” lades till ett annat parti: dela av dem där.`,
  'merge-itself': () => 'Ett parti kan inte slås ihop med sig självt.',
  'merge-later-coat': ({ batchName, number, at }, speak) =>
    `”${batchName}” fick sin strykning ${number} först efter ${speak.moment(at)}.`,
  'boards-unlike': ({ differences }, _speak, say) =>
    `Brädorna är inte lika. Det som skiljer: ${differences.map(say).join('; ')}.`,
  'unlike/timber': ({ ours, theirs }) =>
    `virket (${names.species[ours]}, ${names.species[theirs]})`,
  'unlike/surface': ({ ours, theirs }) =>
    `ytan (${names.surfaces[ours]}, ${names.surfaces[theirs]})`,
  'unlike/length': ({ oursMm, theirsMm }, speak) =>
    `längden (${speak.bare.length(oursMm)} och ${speak.length(theirsMm)})`,
  'unlike/width': ({ oursMm, theirsMm }, speak) =>
    `bredden (${speak.bare.length(oursMm)} och ${speak.length(theirsMm)})`,
  'unlike/thickness': ({ oursMm, theirsMm }, speak) =>
    `tjockleken (${speak.bare.length(oursMm)} och ${speak.length(theirsMm)})`,
  'unlike/state': ({ ours, theirs }) =>
    `skicket före strykningen (${stateOf(ours)}, ${stateOf(theirs)})`,
  'unlike/plan': () => 'strykplanen eller dess version',
  'unlike/coats': ({ ours, theirs }) => `antalet lagda strykningar (${ours} och ${theirs})`,
  'unlike/mixture': ({ number }) => `blandningen i strykning ${number}`,
  'unlike/colour': ({ number }) => `kulören i strykning ${number}`,
  'unlike/faces': ({ number }) => `sidorna i strykning ${number}`,
  'split-too-many': ({ batchName, left, boards }) =>
    `”${batchName}” har ${left} brädor att dela av från; ${boards} kan inte gå om minst en ska vara kvar.`,
  'no-move-in-batch': ({ id }) => `Partiet har ingen flytt med id ${id}.`,
  'move-not-to-wall': () => 'Den här flytten gick inte till en vägg.',
  'no-photo-in-batch': ({ id }) => `Partiet har inget foto med id ${id}.`,
  'no-photo': () => 'Det finns inget foto med det id:t.',
  'no-picture': () =>
    'Det här är ingen bild som kan sparas: den börjar varken som JPEG, PNG eller WebP.',
  'pictures-full': ({ mostMiB }) =>
    `Anläggningens bilder tar ${mostMiB} MiB, så mycket som de får (inställningen photos.maxMiB). Ta bort några först.`,
  'sensor-unheard': ({ sensor }) => `Ingen givare ${sensor} har hörts än.`,
  'sensor-unheard/yet-to-come': ({ sensor }) =>
    `Ingen givare ${sensor} har hörts än; den finns från och med sitt första mätvärde.`,
  'sensor-said-nothing': ({ minutes, at }, speak) =>
    `Givaren skickade ingenting inom ${minutes} min från ${speak.moment(at)}: mät igen medan den skickar, eller säg vad den visade.`,
  'from-needs-place': () => 'Ett from behöver det placeId som det gäller för.',
  'calibration-withdrawn': ({ id }) => `Kalibreringen ${id} är återtagen; lägg in en ny i stället.`,
  'too-many-readings': ({ readings }) =>
    `Det här är fler än ${readings} mätvärden: fråga efter en kortare tid, eller ange points för att glesa ut dem.`,
  'too-many-rules': ({ rules }) =>
    `Det finns ${rules} ämnesregler, så många som tillåts; ta bort en, eller höj discovery.maxRules i inställningarna.`,
  'comparison-too-long': ({ hours }, speak) =>
    `Högst ${speak.number(hours)} h jämförs åt gången: en natt räcker.`,
  'two-sensors-at-least': () => 'Ange minst två olika givare.',
  'no-offsets-offered': () =>
    'Den här jämförelsen föreslår inga tillägg: se vad den säger om varje storhet.',
  'could-not-answer': () => 'Programmet kunde inte besvara den här begäran.',
};
