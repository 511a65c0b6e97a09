/** A stretch at a steady temperature. */
export type Steady = { readonly hours: number; readonly tempC: number };

/** A worked example of the Nurse–Saul sum. */
export type MaturityExample = {
  readonly id: string;
  readonly source: string;
  readonly datumC: number;
  readonly stretches: readonly Steady[];
  /** the printed result in °C·h */
  readonly degreeHours: number;
};

const week = Array.from({ length: 7 }, (): Steady[] => [
  { hours: 12, tempC: 20 },
  { hours: 12, tempC: 10 },
]).flat();

/** **Source:** concrete-maturity teaching material, named with each; the arithmetic is the same for any material. */
export const NURSE_SAUL_EXAMPLES: readonly MaturityExample[] = [
  {
    id: 'M1',
    source:
      'a general concrete teaching page, read; the same figures in Shetty, Concrete Technology, from memory',
    datumC: -11,
    stretches: [{ hours: 28 * 24, tempC: 18 }],
    degreeHours: 19488,
  },
  {
    id: 'M2',
    source: 'a teaching page on quality control of concrete, read (printed as 728 °C·d)',
    datumC: -11,
    stretches: [{ hours: 28 * 24, tempC: 15 }],
    degreeHours: 728 * 24,
  },
  {
    id: 'M3',
    source: 'a how-to page that explains ASTM C1074, read',
    datumC: 0,
    stretches: [
      { hours: 12, tempC: 20 },
      { hours: 12, tempC: 25 },
    ],
    degreeHours: 540,
  },
  {
    id: 'M6',
    source: 'Shetty, Concrete Technology, worked example on maturity, from memory',
    datumC: -11,
    stretches: week,
    degreeHours: 4368,
  },
];

/** Hours until a sum is reached at a steady temperature (M4), and the mean temperature it needs (M5); datum 0 °C. **Source:** a general page on maturity arithmetic, read. */
export const NURSE_SAUL_INVERSE = {
  degreeHours: 3500,
  atC: 23,
  printedHours: 152,
  inHours: 72,
  printedMeanC: 49,
} as const;

/** Hours at 20 °C. **Source:** own calculation apart from the program; no printed Arrhenius example was found. */
export const ARRHENIUS_EXAMPLES: readonly {
  readonly id: string;
  readonly activationEnergyJPerMol: number;
  readonly stretches: readonly Steady[];
  readonly equivalentHours: number;
}[] = [
  {
    id: 'M7',
    activationEnergyJPerMol: 50_000,
    stretches: [{ hours: 24, tempC: 10 }],
    equivalentHours: 11.6298,
  },
  {
    id: 'M8',
    activationEnergyJPerMol: 70_000,
    stretches: [{ hours: 24, tempC: 10 }],
    equivalentHours: 8.7039,
  },
  {
    id: 'M9',
    activationEnergyJPerMol: 50_000,
    stretches: [
      { hours: 12, tempC: 10 },
      { hours: 12, tempC: 30 },
    ],
    equivalentHours: 29.4231,
  },
];
