import type { Quantity } from '../../contract/quantity.ts';
import type { Phrases } from '../phrase.ts';
import type { DetailSentences, Thing } from '../subject/detail.ts';
import { names } from './thing-names.ts';

const things: Readonly<Record<Thing, string>> = {
  place: 'place',
  batch: 'batch',
  'coating-plan': 'coating plan',
  tin: 'tin',
  device: 'device',
  calibration: 'calibration',
  notice: 'notice',
  'topic-rule': 'topic rule',
};

/** Quantities as what is measured: not “battery”, but what is left in it. */
export const quantityNames: Readonly<Record<Quantity, string>> = {
  ...names.quantities,
  'wood-moisture': 'wood moisture content',
  'wood-resistance': 'resistance between the pins',
  battery: 'battery left',
};

export const detail: Phrases<DetailSentences> = {
  'no-such-thing': ({ thing, id }) => `There is no ${things[thing]} with the id ${id}.`,
  'time-too-early': ({ at, earliestAt }, speak) =>
    `The time ${speak.moment(at)} lies before ${speak.moment(earliestAt)}; check the year.`,
  'time-to-come': ({ at, now }, speak) =>
    `The time ${speak.moment(at)} has not come yet; it is ${speak.moment(now)} here.`,
  'end-before-start': () => 'The end lies before the start.',
  'place-not-within': ({ kind, within }) =>
    `A place of kind ${names.placeKinds[kind]} cannot lie within one of kind ${names.placeKinds[within]}.`,
  'no-place-to-coat': () =>
    'There is no place yet where boards could be coated; make a room or a rack first.',
  'no-such-coat': ({ planName, coats, coat }) =>
    `The plan “${planName}” has ${coats} coats, counted from 0; there is no coat ${coat}.`,
  'no-such-coat/in-batch': ({ id }) => `This batch has no coat with the id ${id}.`,
  'no-such-coat/on-its-way': ({ id }) => `This batch has no coat on its way with the id ${id}.`,
  'coat-begun-after': () => 'The coat cannot begin after it was finished.',
  'coat-out-of-order': ({ coat, finishedAt }, speak) =>
    `Coat ${coat} was finished at ${speak.moment(finishedAt)}, which is the wrong side of this one.`,
  'coat-recorded': ({ coat }) =>
    `Coat ${coat} of this batch is already recorded; take it back first to change it.`,
  'coat-on-already': ({ number }) => `Coat ${number} of this batch is on already.`,
  'coat-begun-already': ({ number }) =>
    `Coat ${number} of this batch was begun and not finished: finish it or give it up first.`,
  'coat-ended-already': () => 'This coat was ended before.',
  'coat-of-origin': ({ batchName }) =>
    `This coat went on while the boards were a part of “${batchName}”: take it back there.`,
  'no-coat-by-then': ({ at }, speak) =>
    `No coat of this batch had been finished by ${speak.moment(at)}: record the coat first.`,
  'batch-without-coat': ({ batchName }) => `“${batchName}” has no such coat.`,
  'plan-too-short': ({ number, planName, coats }) =>
    `Coat ${number} is on already, and the plan “${planName}” has only ${coats}.`,
  'plan-changed': ({ version }) =>
    `This plan was changed meanwhile: its newest version is ${version}. Change that one.`,
  'no-default-plan': ({ surface }) =>
    `There is no default plan for ${surface} boards: give planId.`,
  'no-batch-like-it': ({ field }) =>
    `There is no batch yet whose ${field} could be taken; give it.`,
  'figure-impossible': ({ value, quantity, low, high }, speak) =>
    `${speak.quantity(value, quantity)} is outside of what ${quantityNames[quantity]} can be (${speak.bare.quantity(low, quantity)} to ${speak.quantity(high, quantity)}).`,
  'batch-closed': ({ batchName }) => `The batch “${batchName}” is closed.`,
  'boards-went-on': ({ batchName }) =>
    `The boards of “${batchName}” were put to another batch: split them off there.`,
  'merge-itself': () => 'A batch cannot be put to itself.',
  'merge-later-coat': ({ batchName, number, at }, speak) =>
    `“${batchName}” got its coat ${number} only after ${speak.moment(at)}.`,
  'boards-unlike': ({ differences }, _speak, say) =>
    `These boards are not alike. What differs: ${differences.map(say).join('; ')}.`,
  'unlike/timber': ({ ours, theirs }) => `the timber (${ours}, ${theirs})`,
  'unlike/surface': ({ ours, theirs }) => `the surface (${ours}, ${theirs})`,
  'unlike/length': ({ oursMm, theirsMm }, speak) =>
    `the length (${speak.bare.length(oursMm)} and ${speak.length(theirsMm)})`,
  'unlike/width': ({ oursMm, theirsMm }, speak) =>
    `the width (${speak.bare.length(oursMm)} and ${speak.length(theirsMm)})`,
  'unlike/thickness': ({ oursMm, theirsMm }, speak) =>
    `the thickness (${speak.bare.length(oursMm)} and ${speak.length(theirsMm)})`,
  'unlike/state': ({ ours, theirs }) =>
    `the state before coating (${ours ?? 'not said'}, ${theirs ?? 'not said'})`,
  'unlike/plan': () => 'the coating plan or its version',
  'unlike/coats': ({ ours, theirs }) => `the coats that are on (${ours} and ${theirs})`,
  'unlike/mixture': ({ number }) => `the mixture of coat ${number}`,
  'unlike/colour': ({ number }) => `the colour of coat ${number}`,
  'unlike/faces': ({ number }) => `the faces of coat ${number}`,
  'split-too-many': ({ batchName, left, boards }) =>
    `“${batchName}” has ${left} boards to split from; ${boards} cannot go while at least one stays.`,
  'no-move-in-batch': ({ id }) => `This batch has no move with the id ${id}.`,
  'move-not-to-wall': () => 'This move did not lead to a wall.',
  'no-photo-in-batch': ({ id }) => `This batch has no photo with the id ${id}.`,
  'no-photo': () => 'There is no photo with this id.',
  'no-picture': () =>
    'This is no picture that can be kept: it begins like neither JPEG, PNG nor WebP.',
  'pictures-full': ({ mostMiB }) =>
    `The pictures of this site take ${mostMiB} MiB, which is as much as they may (setting photos.maxMiB). Take some away first.`,
  'sensor-unheard': ({ sensor }) => `No sensor ${sensor} has been heard yet.`,
  'sensor-unheard/yet-to-come': ({ sensor }) =>
    `No sensor ${sensor} has been heard yet; it exists from its first reading.`,
  'sensor-said-nothing': ({ minutes, at }, speak) =>
    `The sensor sent nothing within ${minutes} min of ${speak.moment(at)}: measure again while it sends, or say what it showed.`,
  'from-needs-place': () => 'A from needs the placeId it holds for.',
  'calibration-withdrawn': ({ id }) =>
    `The calibration ${id} was withdrawn; record a new one instead.`,
  'too-many-readings': ({ readings }) =>
    `These are more than ${readings} readings: ask for a shorter time, or give points to thin them out.`,
  'too-many-rules': ({ rules }) =>
    `There are ${rules} topic rules, which is as many as are allowed; take one away, or raise discovery.maxRules in the settings.`,
  'comparison-too-long': ({ hours }, speak) =>
    `At most ${speak.number(hours)} h are compared at once: a night is enough.`,
  'two-sensors-at-least': () => 'Name at least two different sensors.',
  'no-offsets-offered': () =>
    'This comparison offers no offsets: look at what it says of each quantity.',
  'could-not-answer': () => 'The daemon could not answer this request.',
};
