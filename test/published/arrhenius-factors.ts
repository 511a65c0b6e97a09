/** Rates and temperature coefficients that follow from an activation energy. */
export type ArrheniusRow = {
  readonly kJPerMol: number;
  /** rate 10 K warmer over rate, for 5→15, 10→20, 15→25 and 20→30 °C */
  readonly q10: readonly [number, number, number, number];
  /** rate at 5, 10, 25 and 30 °C relative to 20 °C */
  readonly relative: readonly [number, number, number, number];
  /** datum of the straight line with the same slope at 20 °C, °C */
  readonly tangentDatumC: number;
};

/** **Source:** Arrhenius law with R = 8.314462618 J/(mol·K), worked apart from the program (own calculation). */
export const ARRHENIUS_FACTORS: readonly ArrheniusRow[] = [
  {
    kJPerMol: 20,
    q10: [1.35, 1.336, 1.323, 1.311],
    relative: [0.642, 0.748, 1.148, 1.311],
    tangentDatumC: -15.73,
  },
  {
    kJPerMol: 24,
    q10: [1.434, 1.416, 1.399, 1.384],
    relative: [0.588, 0.706, 1.18, 1.384],
    tangentDatumC: -9.77,
  },
  {
    kJPerMol: 30,
    q10: [1.569, 1.544, 1.522, 1.501],
    relative: [0.515, 0.647, 1.229, 1.501],
    tangentDatumC: -3.82,
  },
  {
    kJPerMol: 33.5,
    q10: [1.653, 1.625, 1.598, 1.574],
    relative: [0.477, 0.615, 1.259, 1.574],
    tangentDatumC: -1.33,
  },
  {
    kJPerMol: 35,
    q10: [1.691, 1.661, 1.632, 1.606],
    relative: [0.461, 0.602, 1.272, 1.606],
    tangentDatumC: -0.41,
  },
  {
    kJPerMol: 40,
    q10: [1.823, 1.785, 1.751, 1.718],
    relative: [0.413, 0.56, 1.317, 1.718],
    tangentDatumC: 2.14,
  },
  {
    kJPerMol: 41.5,
    q10: [1.864, 1.825, 1.788, 1.754],
    relative: [0.399, 0.548, 1.33, 1.754],
    tangentDatumC: 2.78,
  },
  {
    kJPerMol: 45,
    q10: [1.965, 1.919, 1.878, 1.839],
    relative: [0.369, 0.521, 1.363, 1.839],
    tangentDatumC: 4.12,
  },
  {
    kJPerMol: 50,
    q10: [2.118, 2.064, 2.014, 1.967],
    relative: [0.331, 0.485, 1.411, 1.967],
    tangentDatumC: 5.71,
  },
  {
    kJPerMol: 55,
    q10: [2.283, 2.219, 2.16, 2.105],
    relative: [0.296, 0.451, 1.46, 2.105],
    tangentDatumC: 7.01,
  },
  {
    kJPerMol: 60,
    q10: [2.461, 2.385, 2.316, 2.252],
    relative: [0.265, 0.419, 1.511, 2.252],
    tangentDatumC: 8.09,
  },
  {
    kJPerMol: 66,
    q10: [2.692, 2.602, 2.519, 2.443],
    relative: [0.232, 0.384, 1.575, 2.443],
    tangentDatumC: 9.17,
  },
  {
    kJPerMol: 70,
    q10: [2.859, 2.757, 2.664, 2.579],
    relative: [0.213, 0.363, 1.619, 2.579],
    tangentDatumC: 9.79,
  },
  {
    kJPerMol: 71,
    q10: [2.902, 2.798, 2.702, 2.614],
    relative: [0.208, 0.357, 1.63, 2.614],
    tangentDatumC: 9.94,
  },
  {
    kJPerMol: 75,
    q10: [3.082, 2.965, 2.858, 2.759],
    relative: [0.19, 0.337, 1.675, 2.759],
    tangentDatumC: 10.47,
  },
  {
    kJPerMol: 80,
    q10: [3.322, 3.187, 3.065, 2.953],
    relative: [0.17, 0.314, 1.734, 2.953],
    tangentDatumC: 11.07,
  },
  {
    kJPerMol: 93,
    q10: [4.037, 3.848, 3.676, 3.521],
    relative: [0.128, 0.26, 1.896, 3.521],
    tangentDatumC: 12.32,
  },
  {
    kJPerMol: 100,
    q10: [4.484, 4.259, 4.055, 3.87],
    relative: [0.109, 0.235, 1.99, 3.87],
    tangentDatumC: 12.85,
  },
];
