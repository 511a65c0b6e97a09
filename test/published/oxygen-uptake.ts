/** Mass an oil film on glass had gained, day by day. */
export type OxygenUptakeCurve = {
  readonly table: string;
  readonly drier: string;
  /** day, then gain in % of the oil's mass */
  readonly points: readonly (readonly [number, number])[];
};

/**
 * Raw linseed oil with driers, thin films on glass at room temperature.
 *
 * **Source:** Gardner, H. A., 1911, "Paint Technology and Tests", ch. II, the tables named; read in full
 * (public domain).
 */
export const OXYGEN_UPTAKE: readonly OxygenUptakeCurve[] = [
  {
    table: 'VIII',
    drier: 'PbO 0.50 %',
    points: [
      [1, 0.066],
      [2, 0.158],
      [3, 0.279],
      [5, 0.34],
      [6, 0.472],
      [7, 1.08],
      [8, 4.8],
      [9, 7.36],
      [13, 11.01],
      [15, 11.05],
      [20, 11.25],
    ],
  },
  {
    table: 'VIII',
    drier: 'PbO 0.70 %',
    points: [
      [1, 0.062],
      [3, 0.185],
      [4, 4.07],
      [5, 7.6],
      [6, 9.36],
      [7, 10.06],
      [8, 10.38],
      [9, 10.41],
      [13, 10.67],
      [20, 10.67],
    ],
  },
  {
    table: 'VIII',
    drier: 'PbO 1.30 %',
    points: [
      [1, 0.079],
      [2, 4.83],
      [3, 8.6],
      [4, 9.55],
      [5, 9.87],
      [6, 10.01],
      [7, 10.14],
      [8, 10.22],
      [9, 10.23],
      [13, 10.48],
      [15, 10.5],
      [20, 10.52],
    ],
  },
  {
    table: 'VI',
    drier: 'MnO2 0.02 %',
    points: [
      [1, 0.08],
      [2, 0.16],
      [3, 0.21],
      [5, 3.01],
      [6, 8],
      [7, 8.58],
      [8, 9.06],
      [10, 9.07],
      [11, 9.15],
      [13, 9.22],
      [14, 9.25],
    ],
  },
  {
    table: 'VII',
    drier: 'MnO2 0.02 % (check run)',
    points: [
      [3, 0.28],
      [4, 3.83],
      [5, 6.64],
      [6, 8.61],
      [7, 9.07],
      [9, 9.25],
    ],
  },
  {
    table: 'IX',
    drier: 'PbO 0.5 + MnO2 0.025 %',
    points: [
      [1, 0.055],
      [2, 0.143],
      [3, 0.17],
      [4, 0.23],
      [5, 0.29],
      [6, 1.44],
      [7, 4.65],
      [11, 10.03],
      [13, 10.37],
      [18, 10.38],
    ],
  },
];

/** The same oil without a drier: hardly anything in 20 days. **Source:** as above, table VIII. */
export const OXYGEN_UPTAKE_WITHOUT_DRIER: OxygenUptakeCurve = {
  table: 'VIII',
  drier: 'none',
  points: [
    [1, 0.042],
    [2, 0.098],
    [3, 0.128],
    [4, 0.164],
    [5, 0.176],
    [6, 0.188],
    [7, 0.206],
    [8, 0.212],
    [9, 0.226],
    [13, 0.327],
    [15, 0.466],
    [20, 0.521],
  ],
};
