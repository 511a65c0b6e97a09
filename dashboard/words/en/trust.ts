import type { CalibrationHow, Salt } from '../../../daemon/contract/calibration.ts';
import type { SensorHeight } from '../../../daemon/contract/sensor.ts';
import type { WoodProbe } from '../../../daemon/contract/wood-probe.ts';
import { plural } from '../plural.ts';

type Way = CalibrationHow['kind'];

/** Whether a sensor can be trusted: faults, calibrations, and sensors compared in one box. */
export const trust = {
  /** `ago` is “4 minutes ago” or “just now”. */
  faultBegan: (fault: string, ago: string) => `${fault}, began ${ago}`,

  calibrate: {
    /** What unfolds the calibrations of one sensor. */
    fold: (sensor: string) => `Calibrate ${sensor}`,
    earlier: (count: number) =>
      plural('en', count, {
        one: '1 earlier calibration kept, corrected or withdrawn since',
        other: `${count} earlier calibrations kept, corrected or withdrawn since`,
      }),
    another: 'A new calibration',
    withdraw: 'Withdraw it',
    correct: 'Correct it',

    quantity: 'What it measures',
    against: 'Against what',
    /** The ways of calibrating as a choice. */
    ways: {
      'hand-meter': 'A hand meter beside it',
      offset: 'Offset',
      'two-point': 'Two points',
      salts: 'Saturated salts',
      'ice-point': 'Ice water',
      'test-resistor': 'Test resistor',
    } satisfies Record<Way, string>,
    /** The same within the line below. */
    waysWithin: {
      'hand-meter': 'a hand meter beside it',
      offset: 'offset',
      'two-point': 'two points',
      salts: 'saturated salts',
      'ice-point': 'ice water',
      'test-resistor': 'test resistor',
    } satisfies Record<Way, string>,
    /**
     * A calibration that holds: “Air temperature: two points, × 1.020 +0.30 °C, since Thu 14 May,
     * 14:32”. `correction` is what is done to what the sensor sends.
     */
    forAll: (quantity: string, way: string, correction: string) =>
      `${quantity}: ${way}, ${correction}, for all readings`,
    since: (quantity: string, way: string, correction: string, at: string) =>
      `${quantity}: ${way}, ${correction}, since ${at}`,
    /** One that was corrected or withdrawn. */
    until: (quantity: string, way: string, correction: string, at: string) =>
      `${quantity}: ${way}, ${correction}, until ${at}`,
    /** Behind one that holds, where a later one of the same quantity took its place. */
    notInForce: (line: string) => `${line} (another one holds now)`,
    withNote: (line: string, note: string) => `${line}. ${note}`,

    holds: 'Holds',
    holdsChoices: {
      now: 'from now on',
      since: 'from a moment on',
      ever: 'for all its readings, also those of before',
    },
    from: 'From when',
    note: 'Note, if any',
    keepNew: 'Calibrate',
    keepCorrection: 'Keep the correction',

    handMeterShows: 'The hand meter shows',
    sensorSent: 'The sensor sent then',
    readWhen: 'Read when',
    readWhenHint:
      'Left empty: now. Hold it beside the sensor until both stand still. What the sensor sent is looked up.',
    readWhenHintCorrected:
      'For another time empty the field above: what the sensor sent then is looked up.',
    add: 'Add to what it sends',
    pointShown: (point: string) => `It shows, point ${point}`,
    pointActual: (point: string) => `So it is, point ${point}`,
    firstSalt: {
      label: 'First salt',
      temperature: 'Temperature over the first salt',
      shown: 'Shown over the first salt',
    },
    secondSalt: {
      label: 'Second salt',
      temperature: 'Temperature over the second salt',
      shown: 'Shown over the second salt',
    },
    noSalt: 'none',
    /** Salts with the humidity that stands over their saturated solution. */
    salts: {
      'sodium-chloride': 'Sodium chloride (table salt), about 75 %',
      'magnesium-chloride': 'Magnesium chloride, about 33 %',
      'magnesium-nitrate': 'Magnesium nitrate, about 54 %',
      'potassium-chloride': 'Potassium chloride, about 85 %',
      'potassium-sulfate': 'Potassium sulfate, about 98 %',
      'lithium-chloride': 'Lithium chloride, about 11 %',
    } satisfies Record<Salt, string>,
    saltsHint:
      'A damp paste of salt in a closed jar, half a day at steady temperature. Keep salts away from eyes and food, and from children.',
    iceShown: 'It shows in ice water',
    iceHint: 'Crushed ice with a little water, stirred; only for a probe that may get wet.',
    resistor: 'The resistor has',
    resistorShown: 'It shows with the resistor between its leads',
  },

  /** All nodes in one closed box over night: which is the odd one out. */
  compare: {
    chooseTwo: 'Choose two sensors or more.',
    needsTwo: 'With two sensors or more they can be compared in one closed box.',
    about:
      'Lay all sensors into one closed box, away from sun and heater, and leave it for a night. Then tick them and press compare.',
    inTheBox: 'Lay in the box',
    from: 'Together from',
    to: 'Until',
    compare: 'Compare',
    nothing: 'Nothing that can be compared came from at least two of them in that time.',
    sensor: 'Sensor',
    /** Headings of columns: how far a sensor stands from the others, and what is offered. */
    apart: (unit: string) => `Apart, ${unit}`,
    offered: (unit: string) => `Offered, ${unit}`,
    noOffer: 'none',
    oddOneOut: 'odd one out',
    whose: 'Whose offsets to take',
    take: 'Take these offsets',
    taken: (count: number) =>
      plural('en', count, {
        one: '1 offset holds from the end of the comparison on. What was sent stays as it was; each can be corrected or withdrawn.',
        other: `${count} offsets hold from the end of the comparison on. What was sent stays as it was; each can be corrected or withdrawn.`,
      }),
  },

  /** What the pins of a wood probe tell; a percentage is of the mass of dry wood. */
  probe: {
    moisture: (percent: string) => `Pins: ${percent}`,
    wetterThan: (percent: string) => `Pins: out of range: wetter than ${percent}`,
    drierThan: (percent: string) => `Pins: out of range: drier than ${percent}`,
    /** `timber` is that whose resistance the reading was held against. */
    readAs: (timber: string) => `read as ${timber}`,
    readAsAssumed: (timber: string) => `read as ${timber} (assumed: say which timber)`,
    woodAt: {
      'own-surface': (temperature: string) => `wood at ${temperature}, its own thermometer`,
      'place-surface': (temperature: string) =>
        `wood at ${temperature}, a thermometer on the boards`,
      air: (temperature: string) => `wood at ${temperature}, the air there`,
      assumed: (temperature: string) => `wood at ${temperature}, assumed`,
    } satisfies Record<NonNullable<WoodProbe['woodTempFrom']>, (temperature: string) => string>,
  },

  traits: {
    /** What unfolds where a sensor hangs. */
    fold: (sensor: string) => `How ${sensor} hangs`,
    height: (sensor: string) => `Height of ${sensor}`,
    heightHint: 'Alone and not on the bottom shelf, the floor is taken to be colder.',
    notSaid: 'not said',
    heights: {
      'bottom-shelf': 'on the bottom shelf',
      'eye-height': 'at eye height',
      'top-shelf': 'on the top shelf',
    } satisfies Record<SensorHeight, string>,
    timber: (sensor: string) => `Timber that ${sensor} sits in`,
    timberOfBatch: 'that of the batch there',
    keep: 'Keep it',
  },
};
