import type { Place } from '../../../daemon/contract/place.ts';
import type { Timber } from '../../../daemon/contract/timber.ts';
import type { Tin } from '../../../daemon/contract/tin.ts';
import { names } from '../../../daemon/wording/en/thing-names.ts';
import { capitalized } from '../capitalized.ts';
import type { Node } from '../node.ts';
import { plural } from '../plural.ts';

type Known<T> = NonNullable<T>;
type Exposure = Known<Place['exposure']>;

const parts = capitalized(names.mixtureParts);

/** Places, sensors, batches, plans and tins: what is set up once. */
export const setup = {
  title: 'Set up',
  guided: 'One thing at a time, from the beginning',
  /** The first choice of a list where nothing has to be said. */
  notSaid: 'not said',
  attention: {
    title: 'What wants attention',
    seen: 'Seen',
  },
  place: {
    title: 'A new place',
    kind: 'What is it',
    name: 'Name',
    nameHint: 'As it is called in the shed, for example North rack',
    within: 'In which room',
    inNone: 'in none',
    length: 'Length',
    width: 'Width',
    height: 'Height',
    /** Under length, width and height of a room. */
    volume: (volume: string) => `That holds ${volume} of air.`,
    takes: 'Takes, end to end',
    takesBoards: 'Or so many boards',
    takesHint:
      'All shelves together. With both the tighter counts; with neither it never says that it is full.',
    holdsAir: 'Holds so much air',
    facing: 'Facing',
    facings: capitalized(names.facings),
    stands: 'Stands',
    exposures: {
      open: 'open to weather',
      'under-eaves': 'under eaves',
      shade: 'in the shade',
    } satisfies Record<Exposure, string>,
    make: 'Make the place',
    made: (name: string) => `Made: ${name}.`,
  },
  places: {
    toChange: (count: number) =>
      plural('en', count, { one: '# place, to change', other: '# places, to change' }),
    change: 'Change',
    /** The same for a screen reader, with the place it is about. */
    changeIt: (name: string) => `Change ${name}`,
    keep: 'Keep the change',
    changedMeanwhile:
      'Somebody changed this place while the form was open. What stands there now is shown above; look at it before you keep yours.',
  },
  found: { title: 'Found, not known yet' },
  sensors: {
    title: 'Sensors',
    none: (topic: Node) => [
      'None yet. A sensor appears here by itself with its first reading over MQTT, on the topic ',
      topic,
      '.',
    ],
    waits: 'waits to be placed',
    hang: (count: number) =>
      plural('en', count, {
        one: '# sensor hangs where it should',
        other: '# sensors hang where they should',
      }),
    /** One figure of a sensor: “Air temperature 18.4 °C, 4 minutes ago”. */
    latest: (quantity: string, value: string, ago: string) => `${quantity} ${value}, ${ago}`,
    where: (sensor: string) => `Where ${sensor} hangs`,
    nowhere: 'nowhere yet',
    place: 'Place it',
    move: 'Move it',
  },
  /** All sensors on one look. */
  health: {
    title: 'How the sensors are',
    sensor: 'Sensor',
    where: 'Hangs at',
    heard: 'Last heard',
    battery: 'Battery',
    faults: 'What is wrong',
    never: 'never',
    nothing: 'nothing found',
    /** Shown where more than one thing is wrong: “Stuck, low battery”. */
    summary: (well: number, ill: number) =>
      ill === 0
        ? plural('en', well, { one: '# sensor, and it is well.', other: '# sensors, all well.' })
        : plural('en', ill, {
            one: '# sensor needs looking after.',
            other: '# sensors need looking after.',
          }),
  },
  compare: { title: 'Compare sensors' },
  batch: {
    title: 'A new batch',
    asLast: (name: string) => `Same timber and size as “${name}”, until you say otherwise.`,
    name: 'Name',
    nameHint: 'What the boards are for, for example South gable',
    where: 'Where the boards lie',
    surface: 'Surface',
    timber: 'Timber',
    boards: 'Boards',
    plan: 'Coating plan',
    usualPlan: 'the usual one',
    /** Folds away the plan and what is known of the timber. */
    more: 'Another plan; old boards, how they lie, knots',
    start: 'Start the batch',
    sizesInStock: 'Sizes in stock',
    lengths: 'Lengths',
    length: 'Length',
    width: 'Width',
    thickness: 'Thickness',
  },
  timber: {
    before: 'Before it came to you',
    states: {
      new: 'New',
      weathered: 'Weathered grey',
      painted: 'Painted before',
      unknown: 'Nobody knows',
    } satisfies Record<Known<Timber['stateBefore']>, string>,
    restOn: 'What the boards rest on',
    supports: {
      points: 'On points',
      hung: 'Hung',
      stickers: 'On stickers, to turn',
    } satisfies Record<Known<Timber['support']>, string>,
    more: 'Delivered, stored, knots',
    delivered: 'Delivered',
    storedSince: 'Stored since',
    stored: {
      indoors: 'Indoors',
      'under-roof': 'Under a roof',
      wrapped: 'Wrapped',
      'bare-outdoors': 'Bare outdoors',
    } satisfies Record<Known<Timber['storedHow']>, string>,
    knotsAndResin: 'Knots and resin',
    knots: {
      'not-looked': 'Not looked yet',
      few: 'Few knots',
      many: 'Many knots',
      resinous: 'Resin runs',
    } satisfies Record<Known<Timber['knots']>, string>,
  },
  batches: {
    title: 'All batches',
    since: (boards: string, date: string) => `${boards}, since ${date}`,
    sinceClosed: (boards: string, date: string) => `${boards}, since ${date}, closed`,
  },
  plans: {
    title: 'Coating plans',
    usual: 'the usual one',
    version: (version: string) => `version ${version}`,
    /** After the name of a coat: mixture; faces; how far a litre goes. */
    coat: (name: Node, mixture: string, faces: string, rate: string) => [
      name,
      `: ${mixture}; ${faces}; ${rate}`,
    ],
    /** How far paint went in coats that were recorded, beside what was planned. */
    learned: (count: number, rate: string, planned: string) =>
      plural('en', count, {
        one: `from # coat: ${rate}, planned ${planned}`,
        other: `from # coats: ${rate}, planned ${planned}`,
      }),
    change: 'Change this plan',
    staysBeside:
      'This plan stays as it is; another one stands beside it, to be chosen for a batch.',
    newVersion: (version: string) =>
      `Version ${version} will hold for new batches. Batches and coats keep theirs.`,
    another: 'Make another plan of it, under a name of its own',
    name: 'Name',
    coatNumber: (number: string) => `Coat ${number}`,
    parts,
    partsUnit: 'parts',
    covers: 'How far it goes',
    coverWidth: 'Cover width',
    notBefore: 'Not before so many hours, where the paint maker’s sheet says so:',
    /** Above the hours of one job; `job` is “turn”, “stack” … */
    to: (job: string) => `To ${job}`,
    sinksIn: 'sinks in',
    oneMore: 'One coat more',
    oneLess: 'One coat less',
    makePlan: 'Make the plan',
    makeVersion: (version: string) => `Make version ${version}`,
  },
  tins: {
    title: 'Tins',
    kinds: {
      paint: parts.paint,
      primer: 'Primer',
      oil: parts.rawLinseedOil,
      turpentine: parts.turpentine,
    } satisfies Record<Tin['kind'], string>,
    used: (litres: string) => `${litres} used`,
    notOpened: 'not opened yet',
    openSince: (date: string) => `open since ${date}`,
    empty: 'empty',
    isEmpty: 'It is empty',
    notEmpty: 'Not empty after all',
    name: 'What is written on it',
    nameHint: 'So that you find it again, for example Red, large tin, May',
    kind: 'What is in it',
    colour: 'Colour',
    holds: 'Holds',
    opened: 'Opened',
    yes: 'Yes',
    notYet: 'Not yet',
    when: 'When',
    driers: 'Driers',
    driersKnown: {
      unknown: 'Not known',
      'as-sold': 'As sold',
      added: 'Some added',
      poor: 'Poor in driers',
    } satisfies Record<Tin['driers'], string>,
    enter: 'Enter this tin',
  },
  refused: {
    title: (count: string) => `Messages that could not be taken: ${count}`,
    none: 'None.',
    when: 'When',
    topic: 'Topic',
    why: 'Why',
    beganWith: 'It began with',
    bytes: (start: Node, count: number) => [
      start,
      plural('en', count, { one: ' (# byte)', other: ' (# bytes)' }),
    ],
  },
};
