import type { UnitSystem } from '../../format/units.ts';
import type { Node } from '../node.ts';
import { plural } from '../plural.ts';

/** The mixing bench: what goes into the pot at hand, and what to buy. Volumes come with their unit. */
export const pot = {
  title: 'The pot',
  ask: {
    which: 'For which boards',
    whichHint: 'The next coat of their plan',
    ownArea: 'An area of my own',
    area: 'Area',
    /** Beside a figure with the unit m²/L or ft²/gal. */
    spreading: 'The mixture covers',
    parts: {
      paint: 'Parts of paint',
      rawLinseedOil: 'Parts of raw oil',
      turpentine: 'Parts of turpentine',
    },
    width: 'Pot, inside width',
    topWidth: 'At the top, if wider',
    height: 'Inside height',
    more: 'What is in the tins, loss, density of the paint',
    inTins: {
      paint: 'Paint there',
      rawLinseedOil: 'Raw oil there',
      turpentine: 'Turpentine there',
    },
    /** What stays in pots and brushes and reaches no board. */
    loss: 'Lost in pot and brush',
    /** Its density, as the tin says it. */
    weighs: 'Paint weighs',
    reckon: 'Reckon',
  },
  forArea: (volume: string, area: string) => `${volume} for ${area}`,
  forCoat: (coat: string, volume: string, area: string) => `${coat}: ${volume} for ${area}`,
  /** No width of the pot was given; the figures on the stick are in cm or inches. */
  sayWidth: 'Say how wide the pot is, and the marks for the stick stand here.',
  /**
   * Above a list of marks on the stirring stick: “14.2 cm paint”. `fill` is what is mixed in each pot,
   * `holds` what it holds to the brim; null where that is not known.
   */
  pourUntil: (pots: number, fill: string, holds: string | null) => {
    const mixed = plural('en', pots, {
      one: `One pot of ${fill}`,
      other: `# pots, all alike, of ${fill}`,
    });
    const brim = holds === null ? '' : `; it holds ${holds}`;
    return `${mixed}${brim}. Pour until the stick is wet up to`;
  },
  /** Two ways to measure out the same: “450 mL or 675 g”. */
  or: (volume: string, mass: string) => `${volume} or ${mass}`,
  printStrip: 'Print the strip',
  printLabel: 'Print the label',
  whole: {
    caption: 'The whole of it',
    inAll: 'In all',
    volume: { metric: 'Litres', us: 'Volume' } satisfies Record<UnitSystem, string>,
    mass: { metric: 'Grams', us: 'Weight' } satisfies Record<UnitSystem, string>,
    density: 'Density',
    /** `from`: where the density comes from. */
    densityFrom: (density: string, from: Node) => [`${density} `, from],
  },
  enough: (question: Node, answer: Node) => [question, ' ', answer],
  enoughQuestion: 'Enough in the tins?',
  /** How many boards a litre, or a gallon, is enough for. */
  boardsEach: {
    metric: {
      planned: (planned: string) => `Boards a litre: ${planned} by the plan, none recorded yet.`,
      soFar: (planned: string, soFar: string) =>
        `Boards a litre: ${planned} by the plan, ${soFar} so far.`,
    },
    us: {
      planned: (planned: string) => `Boards a gallon: ${planned} by the plan, none recorded yet.`,
      soFar: (planned: string, soFar: string) =>
        `Boards a gallon: ${planned} by the plan, ${soFar} so far.`,
    },
  } satisfies Record<UnitSystem, object>,
  shopping: {
    title: 'What to buy for the whole job',
    paintTins: 'Tins of paint',
    oilTins: 'Cans of raw oil',
    turpentineTins: 'Cans of turpentine',
    /** The sizes that are sold: “10 5 1”. */
    sizesHint: {
      metric: 'in litres, with spaces between',
      us: 'in gallons, with spaces between',
    } satisfies Record<UnitSystem, string>,
    /** The bare ends of boards cut on the scaffold are primed again. */
    keepPrimer: 'Primer kept for cut ends',
    makeList: 'Make the list',
    nothing: 'No coat is still to come: there is nothing to buy.',
    what: 'What',
    needed: 'Needed',
    buy: 'Buy',
    saySizes: 'say the sizes of tins',
    /** “2 × 5 L” */
    tins: (count: string, size: string) => `${count} × ${size}`,
    foot: (coats: number, loss: string, primer: string) =>
      `For ${plural('en', coats, { one: '# coat', other: '# coats' })} still to come, with ${loss} lost and ${primer} of primer kept for cut ends. Thinned paint does not keep for ever: buy what a season uses.`,
  },
};
