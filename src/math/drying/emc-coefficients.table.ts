/**
 * Coefficients of the sorption equation, each a + b * T + c * T^2 with T in degrees Fahrenheit.
 *
 * @source FPL-GTR-282, Eq 4-5
 * @source FPL-190, the set in degrees Fahrenheit
 *
 * Columns: a, b, c.
 */
export const EMC_COEFFICIENTS = {
  W: [330, 0.452, 0.00415],
  K: [0.791, 0.000463, -0.000000844],
  K1: [6.34, 0.000775, -0.0000935],
  K2: [1.09, 0.0284, -0.0000904],
} as const;
