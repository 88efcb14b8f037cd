/**
 * How many standard deviations to add for a share of undersize boards: percent allowed under, factor Z.
 * EM 8731, p. 16, Table 2. The table counts 3.09, which leaves 0.1 %, as none.
 */
export const UNDERSIZE_FACTORS: readonly (readonly [undersizePercent: number, z: number])[] = [
  [0, 3.09],
  [1, 2.34],
  [2, 2.05],
  [2.5, 1.97],
  [3, 1.88],
  [4, 1.75],
  [5, 1.65],
  [10, 1.28],
  [15, 1.04],
];
