import type { Quantity } from '../../contract/quantity.ts';
import type { StateBefore } from '../../contract/timber.ts';
import type { Phrases } from '../phrase.ts';
import type { DetailSentences, Thing } from '../subject/detail.ts';
import { names } from './thing-names.ts';

/** With the word for “none” that goes with its gender. */
const noThing: Readonly<Record<Thing, string>> = {
  place: 'ikke noe sted',
  batch: 'ikke noe parti',
  'coating-plan': 'ingen strøkplan',
  tin: 'ingen boks',
  device: 'ingen enhet',
  calibration: 'ingen kalibrering',
  notice: 'ikke noe varsel',
  'topic-rule': 'ingen emneregel',
};

/** Quantities as what is measured: not “battery”, but what is left in it. */
export const quantityNames: Readonly<Record<Quantity, string>> = {
  ...names.quantities,
  'wood-resistance': 'resistans mellom stiftene',
  battery: 'batteriladning',
};

const states: Readonly<Record<StateBefore, string>> = {
  'new': 'nytt',
  weathered: 'grånet',
  painted: 'malt før',
  unknown: 'ukjent',
};

const stateOf = (state: StateBefore | null) => (state === null ? 'ikke sagt' : states[state]);

export const detail: Phrases<DetailSentences> = {
  'no-such-thing': ({ thing, id }) => `Det finnes ${noThing[thing]} med id ${id}.`,
  'time-too-early': ({ at, earliestAt }, speak) =>
    `Tiden ${speak.moment(at)} ligger før ${speak.moment(earliestAt)}; sjekk året.`,
  'time-to-come': ({ at, now }, speak) =>
    `Tiden ${speak.moment(at)} har ikke kommet ennå; her er det ${speak.moment(now)}.`,
  'end-before-start': () => 'Slutten ligger før starten.',
  'place-not-within': ({ kind, within }) =>
    `Et sted av typen ${names.placeKinds[kind]} kan ikke ligge i et av typen ${names.placeKinds[within]}.`,
  'no-place-to-coat': () =>
    'Det finnes ikke noe sted ennå der bord kan males; lag et rom eller en reol først.',
  'no-such-coat': ({ planName, coats, coat }) =>
    `Planen «${planName}» har ${coats} strøk, talt fra 0; det finnes ikke noe strøk ${coat}.`,
  'no-such-coat/in-batch': ({ id }) => `Partiet har ikke noe strøk med id ${id}.`,
  'no-such-coat/on-its-way': ({ id }) => `Partiet har ikke noe påbegynt strøk med id ${id}.`,
  'coat-begun-after': () => 'Strøket kan ikke begynne etter at det ble ferdig.',
  'coat-out-of-order': ({ coat, finishedAt }, speak) =>
    `Strøk ${coat} ble ferdig ${speak.moment(finishedAt)}, og det er på feil side av dette.`,
  'coat-recorded': ({ coat }) =>
    `Strøk ${coat} av dette partiet er allerede notert; ta det tilbake først for å endre det.`,
  'coat-on-already': ({ number }) => `Strøk ${number} av dette partiet er allerede lagt.`,
  'coat-begun-already': ({ number }) =>
    `Strøk ${number} av dette partiet er påbegynt og ikke ferdig: gjør det ferdig eller avbryt det først.`,
  'coat-ended-already': () => 'Dette strøket ble avsluttet tidligere.',
  'coat-of-origin': ({ batchName }) =>
    `Dette strøket ble lagt mens bordene hørte til «${batchName}»: ta det tilbake der.`,
  'no-coat-by-then': ({ at }, speak) =>
    `Ikke noe strøk av dette partiet var ferdig ${speak.moment(at)}: noter strøket først.`,
  'batch-without-coat': ({ batchName }) => `«${batchName}» har ikke noe slikt strøk.`,
  'plan-too-short': ({ number, planName, coats }) =>
    `Strøk ${number} er allerede lagt, og planen «${planName}» har bare ${coats}.`,
  'plan-changed': ({ version }) =>
    `Planen er endret i mellomtiden: den nyeste versjonen er ${version}. Endre den.`,
  'no-default-plan': ({ surface }) =>
    `Det finnes ingen standardplan for ${names.surfaces[surface]} overflate: oppgi planId.`,
  'no-batch-like-it': ({ field }) =>
    `Det finnes ikke noe parti ennå som ${field} kan tas fra; oppgi det.`,
  'figure-impossible': ({ value, quantity, low, high }, speak) =>
    `${speak.quantity(value, quantity)} ligger utenfor det ${quantityNames[quantity]} kan være (${speak.bare.quantity(low, quantity)} til ${speak.quantity(high, quantity)}).`,
  'batch-closed': ({ batchName }) => `Partiet «${batchName}» er avsluttet.`,
  'boards-went-on': ({ batchName }) =>
    `Bordene i «${batchName}» ble lagt til et annet parti: del dem av der.`,
  'merge-itself': () => 'Et parti kan ikke slås sammen med seg selv.',
  'merge-later-coat': ({ batchName, number, at }, speak) =>
    `«${batchName}» fikk strøk ${number} først etter ${speak.moment(at)}.`,
  'boards-unlike': ({ differences }, _speak, say) =>
    `Disse bordene er ikke like. Det som skiller: ${differences.map(say).join('; ')}.`,
  'unlike/timber': ({ ours, theirs }) =>
    `trevirket (${names.species[ours]}, ${names.species[theirs]})`,
  'unlike/surface': ({ ours, theirs }) =>
    `overflaten (${names.surfaces[ours]}, ${names.surfaces[theirs]})`,
  'unlike/length': ({ oursMm, theirsMm }, speak) =>
    `lengden (${speak.bare.length(oursMm)} og ${speak.length(theirsMm)})`,
  'unlike/width': ({ oursMm, theirsMm }, speak) =>
    `bredden (${speak.bare.length(oursMm)} og ${speak.length(theirsMm)})`,
  'unlike/thickness': ({ oursMm, theirsMm }, speak) =>
    `tykkelsen (${speak.bare.length(oursMm)} og ${speak.length(theirsMm)})`,
  'unlike/state': ({ ours, theirs }) =>
    `tilstanden før maling (${stateOf(ours)}, ${stateOf(theirs)})`,
  'unlike/plan': () => 'strøkplanen eller versjonen av den',
  'unlike/coats': ({ ours, theirs }) => `strøkene som er lagt (${ours} og ${theirs})`,
  'unlike/mixture': ({ number }) => `blandingen i strøk ${number}`,
  'unlike/colour': ({ number }) => `fargen på strøk ${number}`,
  'unlike/faces': ({ number }) => `sidene i strøk ${number}`,
  'split-too-many': ({ batchName, left, boards }) =>
    `«${batchName}» har ${left} bord å dele av fra; ${boards} kan ikke gå når minst ett skal bli igjen.`,
  'no-move-in-batch': ({ id }) => `Partiet har ingen flytting med id ${id}.`,
  'move-not-to-wall': () => 'Denne flyttingen gikk ikke til en vegg.',
  'no-photo-in-batch': ({ id }) => `Partiet har ikke noe bilde med id ${id}.`,
  'no-photo': () => 'Det finnes ikke noe bilde med denne id-en.',
  'no-picture': () =>
    'Dette er ikke et bilde som kan lagres: det begynner verken som JPEG, PNG eller WebP.',
  'pictures-full': ({ mostMiB }) =>
    `Bildene på anlegget tar ${mostMiB} MiB, så mye som de får ta (innstillingen photos.maxMiB). Fjern noen først.`,
  'sensor-unheard': ({ sensor }) => `Ingen sensor ${sensor} er hørt ennå.`,
  'sensor-unheard/yet-to-come': ({ sensor }) =>
    `Ingen sensor ${sensor} er hørt ennå; den finnes fra sin første måling.`,
  'sensor-said-nothing': ({ minutes, at }, speak) =>
    `Sensoren sendte ingenting innen ${minutes} min fra ${speak.moment(at)}: mål igjen mens den sender, eller si hva den viste.`,
  'from-needs-place': () => 'En from trenger den placeId som den gjelder for.',
  'calibration-withdrawn': ({ id }) =>
    `Kalibreringen ${id} er trukket tilbake; legg inn en ny i stedet.`,
  'too-many-readings': ({ readings }) =>
    `Dette er mer enn ${readings} målinger: spør om en kortere tid, eller oppgi points for å tynne dem ut.`,
  'too-many-rules': ({ rules }) =>
    `Det finnes ${rules} emneregler, så mange som er tillatt; fjern en, eller øk discovery.maxRules i innstillingene.`,
  'comparison-too-long': ({ hours }, speak) =>
    `Høyst ${speak.number(hours)} h sammenlignes om gangen: en natt er nok.`,
  'two-sensors-at-least': () => 'Oppgi minst to forskjellige sensorer.',
  'no-offsets-offered': () =>
    'Denne sammenligningen foreslår ingen tillegg: se hva den sier om hver størrelse.',
  'could-not-answer': () => 'Programmet kunne ikke svare på denne forespørselen.',
};
