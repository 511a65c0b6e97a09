import type { UnitSystem } from '../../format/units.ts';
import type { Node } from '../node.ts';

/** Sheets of paper to print: for the stirring stick, the pot, the rack and the door. */
export const print = {
  print: 'Print',
  phone: {
    address: 'Address by which phones reach this computer',
    notFollowed: (example: string) =>
      `A phone cannot follow this address: type the name or number of this computer on the network, for example ${example}.`,
    code: 'QR code that leads to the page of these boards',
  },
  /** Stands for the name of the coat where there is none. */
  mixture: 'Mixture',
  card: 'Card',
  cardNotDrawn: 'The card cannot be drawn',
  door: {
    title: 'Card for the door',
    how: {
      metric: 'A4 upright. Hang it at eye level on the inside of the door that is locked last.',
      us: 'Letter, upright. Hang it at eye level on the inside of the door that is locked last.',
    } satisfies Record<UnitSystem, string>,
    name: 'Before you lock up',
    when: 'On every day of painting, oiling or sanding. Ticking proves nothing: look at it, touch it.',
    /** One line of the list: its title in bold, and a sentence. */
    line: (title: Node, text: Node) => [title, ' ', text],
    /** The lines are filled in with a pen: the number of the fire service, and the address of the shed. */
    fire: 'Smoke or a smell of burning: everybody out, shut the door, call the fire service: ____________. Our address: ____________________________',
    foot: 'Common practice; local codes and the paint maker’s sheet come first.',
  },
  label: {
    title: 'Label for the pot',
    notDrawn: 'The label cannot be drawn',
    how: (size: string) =>
      `${size}. Cut it out and tape it on with clear tape, before the pot is wet outside.`,
    label: 'Label',
    /** The name of the boards is filled in with a pen. */
    forBoards: 'for ________________',
    /** “paint 35 %” */
    share: (part: string, percent: string) => `${part} ${percent}`,
    colour: 'Colour ________________',
    mixed: (date: string) => `Mixed ${date}`,
    mind: 'Stir from the bottom. Keep closed, away from flame, locked up from children. Its rags catch fire by themselves: into water under a lid. Hazardous waste.',
  },
  rack: {
    title: 'Card for the rack',
    how: {
      metric:
        'A5 across. Hang it where a wet board cannot touch it; the code opens the page of these boards on a phone.',
      us: 'Half a letter sheet, across. Hang it where a wet board cannot touch it; the code opens the page of these boards on a phone.',
    } satisfies Record<UnitSystem, string>,
    /** “24 × Norway spruce, sawn, 4200 × 145 × 22 mm”; `surface` as within a sentence. */
    boards: (count: string, species: string, surface: string, size: string) =>
      `${count} × ${species}, ${surface}, ${size}`,
    coat: 'Coat',
    mixture: 'Mixture',
    lastBoardDone: 'Last board done',
    /** An empty column for the pen. */
    feltDry: 'Felt dry',
    foot: 'Wet: do not touch but to test. Oily rags catch fire by themselves.',
  },
  strip: {
    title: 'Strip for the stirring stick',
    notDrawn: 'The strip cannot be drawn',
    noWidth: (back: Node) => ['Nobody said how wide the pot is. ', back],
    back: 'Back to the pot',
    how: (line: string) =>
      `Print it at 100 %, not fitted to the page, and hold a ruler to the line of ${line} before you cut. The foot of the strip stands on the bottom of the pot.`,
    tooLong: {
      metric: (length: string) =>
        `The strip is ${length} long and does not fit on a sheet of A4: take a wider pot or mix less at once.`,
      us: (length: string) =>
        `The strip is ${length} long and does not fit on a letter sheet: take a wider pot or mix less at once.`,
    } satisfies Record<UnitSystem, (length: string) => string>,
    /** One mark: “paint 14.2”. */
    mark: (part: string, figure: string) => `${part} ${figure}`,
    /** For those who cannot see it. `marks` is a list. */
    spoken: (marks: string, unit: string) => `Strip with marks at ${marks} ${unit}`,
    checkSpoken: (length: string) => `A line of ${length} to measure against`,
    check: (length: string) => `this line is ${length} long`,
  },
};
