/**
 * Resistance of coast Douglas fir along the grain at 26.7 °C: moisture in % of oven-dry mass,
 * resistance in MΩ, ascending by moisture; between rows ln R is read on the straight line.
 *
 * **Source:** James 1988, "Electric moisture meters for wood", FPL-GTR-6, Table 1, all from memory;
 * the ends agree with 22 GΩ at 7 % and 0.5 MΩ at 25 % as read elsewhere. On the same resistance it
 * gives a lower moisture than the Nordic pine curve by 1 to 6 %, so never mix the two.
 */
export const DOUGLAS_FIR_RESISTANCE: readonly (readonly [number, number])[] = [
  [7, 22400],
  [8, 4780],
  [9, 1660],
  [10, 630],
  [11, 265],
  [12, 120],
  [13, 60],
  [14, 33],
  [15, 18.6],
  [16, 11.2],
  [17, 7.1],
  [18, 4.6],
  [19, 3.09],
  [20, 2.14],
  [21, 1.51],
  [22, 1.1],
  [23, 0.79],
  [24, 0.6],
  [25, 0.46],
];
