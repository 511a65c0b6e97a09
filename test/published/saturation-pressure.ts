/** A temperature in °C and the saturation pressure of water vapour there in kPa. */
export type SaturationPoint = readonly [number, number];

/**
 * Over water, whole degrees.
 *
 * **Source:** CRC Handbook of Chemistry and Physics, 1992–93, vapour pressure of water, read in a public
 * copy. The 38 °C cell of the copy (6.6398) looks like a slip (smooth value 6.628) and is left out.
 */
export const SATURATION_CRC: readonly SaturationPoint[] = [
  [0, 0.61129],
  [1, 0.65716],
  [2, 0.70605],
  [3, 0.75813],
  [4, 0.81359],
  [5, 0.8726],
  [6, 0.93537],
  [7, 1.0021],
  [8, 1.073],
  [9, 1.1482],
  [10, 1.2281],
  [11, 1.3129],
  [12, 1.4027],
  [13, 1.4979],
  [14, 1.5988],
  [15, 1.7056],
  [16, 1.8185],
  [17, 1.938],
  [18, 2.0644],
  [19, 2.1978],
  [20, 2.3388],
  [21, 2.4877],
  [22, 2.6447],
  [23, 2.8104],
  [24, 2.985],
  [25, 3.169],
  [26, 3.3629],
  [27, 3.567],
  [28, 3.7818],
  [29, 4.0078],
  [30, 4.2455],
  [31, 4.4953],
  [32, 4.7578],
  [33, 5.0335],
  [34, 5.3229],
  [35, 5.6267],
  [36, 5.9453],
  [37, 6.2795],
  [39, 6.9969],
  [40, 7.3814],
  [45, 9.5895],
  [49, 11.745],
];

/** **Source:** a public engineering table of the vapour pressure of water, read; it runs up to 0.05 % above the CRC's. */
export const SATURATION_ENGINEERING: readonly SaturationPoint[] = [
  [0.01, 0.61165],
  [2, 0.70599],
  [4, 0.81355],
  [10, 1.2282],
  [14, 1.599],
  [18, 2.0647],
  [20, 2.3393],
  [25, 3.1699],
  [30, 4.247],
  [34, 5.3251],
  [40, 7.3849],
  [44, 9.1124],
  [50, 12.352],
];

/** **Source:** ASHRAE Fundamentals, thermodynamic properties of moist air, from memory. */
export const SATURATION_ASHRAE: readonly SaturationPoint[] = [
  [0, 0.6112],
  [10, 1.228],
  [20, 2.3389],
  [25, 3.1693],
  [30, 4.2462],
];
