import type { Surface } from '../../contract/plan.ts';
import type { Quantity } from '../../contract/quantity.ts';
import type { StateBefore } from '../../contract/timber.ts';
import type { Phrases } from '../phrase.ts';
import type { DetailSentences, Thing } from '../subject/detail.ts';
import { names } from './thing-names.ts';

const things: Readonly<Record<Thing, string>> = {
  place: 'Platz',
  batch: 'Partie',
  'coating-plan': 'Anstrichplan',
  tin: 'Dose',
  device: 'Gerät',
  calibration: 'Kalibrierung',
  notice: 'Meldung',
  'topic-rule': 'Topic-Regel',
};

const surfaces: Readonly<Record<Surface, string>> = { sawn: 'sägeraue', planed: 'gehobelte' };

/** Quantities as what is measured: not “battery”, but what is left in it. */
export const quantityNames: Readonly<Record<Quantity, string>> = {
  ...names.quantities,
  'wood-resistance': 'Widerstand zwischen den Stiften',
  battery: 'Batterieladung',
};

const states: Readonly<Record<StateBefore, string>> = {
  'new': 'neu',
  weathered: 'vergraut',
  painted: 'schon gestrichen',
  unknown: 'unbekannt',
};

const stateOf = (state: StateBefore | null) => (state === null ? 'keine Angabe' : states[state]);

export const detail: Phrases<DetailSentences> = {
  'no-such-thing': ({ thing, id }) =>
    `Mit der Kennung ${id} gibt es hier nichts (gesucht: ${things[thing]}).`,
  'time-too-early': ({ at, earliestAt }, speak) =>
    `Die Zeit ${speak.moment(at)} liegt vor ${speak.moment(earliestAt)}; das Jahr prüfen.`,
  'time-to-come': ({ at, now }, speak) =>
    `Die Zeit ${speak.moment(at)} ist noch nicht gekommen; hier ist es ${speak.moment(now)}.`,
  'end-before-start': () => 'Das Ende liegt vor dem Anfang.',
  'place-not-within': ({ kind, within }) =>
    `Ein Platz der Art „${names.placeKinds[kind]}“ kann nicht in einem der Art „${names.placeKinds[within]}“ liegen.`,
  'no-place-to-coat': () =>
    'Es gibt noch keinen Platz, an dem Bretter gestrichen werden könnten; zuerst einen Raum oder ein Gestell anlegen.',
  'no-such-coat': ({ planName, coats, coat }) =>
    `Der Plan „${planName}“ hat so viele Anstriche: ${coats}, gezählt ab 0; einen Anstrich ${coat} gibt es nicht.`,
  'no-such-coat/in-batch': ({ id }) => `Diese Partie hat keinen Anstrich mit der Kennung ${id}.`,
  'no-such-coat/on-its-way': ({ id }) =>
    `Diese Partie hat keinen begonnenen Anstrich mit der Kennung ${id}.`,
  'coat-begun-after': () => 'Der Anstrich kann nicht beginnen, nachdem er beendet war.',
  'coat-out-of-order': ({ coat, finishedAt }, speak) =>
    `Anstrich ${coat} wurde ${speak.moment(finishedAt)} beendet, auf der falschen Seite von diesem.`,
  'coat-recorded': ({ coat }) =>
    `Anstrich ${coat} dieser Partie ist schon eingetragen; zum Ändern zuerst zurücknehmen.`,
  'coat-on-already': ({ number }) => `Anstrich ${number} dieser Partie ist schon drauf.`,
  'coat-begun-already': ({ number }) =>
    `Anstrich ${number} dieser Partie wurde begonnen und nicht beendet: zuerst beenden oder aufgeben.`,
  'coat-ended-already': () => 'Dieser Anstrich wurde schon beendet.',
  'coat-of-origin': ({ batchName }) =>
    `Dieser Anstrich kam drauf, als die Bretter noch zu „${batchName}“ gehörten: dort zurücknehmen.`,
  'no-coat-by-then': ({ at }, speak) =>
    `Bis ${speak.moment(at)} war kein Anstrich dieser Partie beendet: zuerst den Anstrich eintragen.`,
  'batch-without-coat': ({ batchName }) => `„${batchName}“ hat keinen solchen Anstrich.`,
  'plan-too-short': ({ number, planName, coats }) =>
    `Anstrich ${number} ist schon drauf, und der Plan „${planName}“ hat nur ${coats}.`,
  'plan-changed': ({ version }) =>
    `Dieser Plan wurde inzwischen geändert: Seine neueste Fassung ist ${version}. Diese ändern.`,
  'no-default-plan': ({ surface }) =>
    `Für ${surfaces[surface]} Bretter gibt es keinen üblichen Plan: planId angeben.`,
  'no-batch-like-it': ({ field }) =>
    `Es gibt noch keine Partie, von der ${field} übernommen werden könnte; angeben.`,
  'figure-impossible': ({ value, quantity, low, high }, speak) =>
    `${speak.quantity(value, quantity)} ist für diese Größe nicht möglich: ${quantityNames[quantity]} (${speak.bare.quantity(low, quantity)} bis ${speak.quantity(high, quantity)}).`,
  'batch-closed': ({ batchName }) => `Die Partie „${batchName}“ ist abgeschlossen.`,
  'boards-went-on': ({ batchName }) =>
    `Die Bretter von „${batchName}“ kamen zu einer anderen Partie: dort abteilen.`,
  'merge-itself': () => 'Eine Partie kann nicht mit sich selbst vereint werden.',
  'merge-later-coat': ({ batchName, number, at }, speak) =>
    `„${batchName}“ bekam Anstrich ${number} erst nach ${speak.moment(at)}.`,
  'boards-unlike': ({ differences }, _speak, say) =>
    `Diese Bretter sind nicht gleich. Was sich unterscheidet: ${differences.map(say).join('; ')}.`,
  'unlike/timber': ({ ours, theirs }) =>
    `das Holz (${names.species[ours]}, ${names.species[theirs]})`,
  'unlike/surface': ({ ours, theirs }) =>
    `die Oberfläche (${names.surfaces[ours]}, ${names.surfaces[theirs]})`,
  'unlike/length': ({ oursMm, theirsMm }, speak) =>
    `die Länge (${speak.bare.length(oursMm)} und ${speak.length(theirsMm)})`,
  'unlike/width': ({ oursMm, theirsMm }, speak) =>
    `die Breite (${speak.bare.length(oursMm)} und ${speak.length(theirsMm)})`,
  'unlike/thickness': ({ oursMm, theirsMm }, speak) =>
    `die Dicke (${speak.bare.length(oursMm)} und ${speak.length(theirsMm)})`,
  'unlike/state': ({ ours, theirs }) =>
    `der Zustand vor dem Streichen (${stateOf(ours)}, ${stateOf(theirs)})`,
  'unlike/plan': () => 'der Anstrichplan oder seine Fassung',
  'unlike/coats': ({ ours, theirs }) => `die Anstriche, die drauf sind (${ours} und ${theirs})`,
  'unlike/mixture': ({ number }) => `die Mischung von Anstrich ${number}`,
  'unlike/colour': ({ number }) => `der Farbton von Anstrich ${number}`,
  'unlike/faces': ({ number }) => `die Seiten von Anstrich ${number}`,
  'split-too-many': ({ batchName, left, boards }) =>
    `„${batchName}“ hat ${left} Bretter zum Abteilen; ${boards} können nicht gehen, wenn mindestens eines bleibt.`,
  'no-move-in-batch': ({ id }) => `Diese Partie hat kein Umlegen mit der Kennung ${id}.`,
  'move-not-to-wall': () => 'Dieses Umlegen führte nicht an eine Hauswand.',
  'no-photo-in-batch': ({ id }) => `Diese Partie hat kein Foto mit der Kennung ${id}.`,
  'no-photo': () => 'Es gibt kein Foto mit dieser Kennung.',
  'no-picture': () =>
    'Das ist kein Bild, das sich aufbewahren lässt: Es beginnt weder wie JPEG noch wie PNG oder WebP.',
  'pictures-full': ({ mostMiB }) =>
    `Die Bilder hier belegen ${mostMiB} MiB, so viel, wie sie dürfen (Einstellung photos.maxMiB). Zuerst einige wegnehmen.`,
  'sensor-unheard': ({ sensor }) => `Ein Sensor ${sensor} war noch nicht zu hören.`,
  'sensor-unheard/yet-to-come': ({ sensor }) =>
    `Ein Sensor ${sensor} war noch nicht zu hören; es gibt ihn ab seinem ersten Messwert.`,
  'sensor-said-nothing': ({ minutes, at }, speak) =>
    `Der Sensor hat im Umkreis von ${minutes} min um ${speak.moment(at)} nichts gesendet: noch einmal messen, während er sendet, oder sagen, was er zeigte.`,
  'from-needs-place': () => 'Zu from gehört die placeId, für die es gilt.',
  'calibration-withdrawn': ({ id }) =>
    `Die Kalibrierung ${id} wurde zurückgezogen; stattdessen eine neue eintragen.`,
  'too-many-readings': ({ readings }) =>
    `Das sind mehr als ${readings} Messwerte: eine kürzere Zeit anfragen oder mit points ausdünnen.`,
  'too-many-rules': ({ rules }) =>
    `Es gibt ${rules} Topic-Regeln, so viele, wie erlaubt sind; eine wegnehmen oder discovery.maxRules in den Einstellungen erhöhen.`,
  'comparison-too-long': ({ hours }, speak) =>
    `Auf einmal werden höchstens ${speak.number(hours)} h verglichen: Eine Nacht genügt.`,
  'two-sensors-at-least': () => 'Mindestens zwei verschiedene Sensoren nennen.',
  'no-offsets-offered': () =>
    'Dieser Vergleich schlägt keinen Versatz vor: ansehen, was er zu jeder Größe sagt.',
  'could-not-answer': () => 'Der Dienst konnte diese Anfrage nicht beantworten.',
};
