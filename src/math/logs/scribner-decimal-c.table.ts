/**
 * Scribner Decimal C, in board feet (the printed units are tens: 5 is half a unit).
 * E. Wengert, "Log Volume", 4 May 2001, Scribner table: 6 to 20 in small-end diameter inside bark, 6 to 16 ft. Larger sizes
 * were not seen in print. Bailey 1911 has 5 where this copy has 10 for 7 in by 8 ft.
 */
export const SCRIBNER_DECIMAL_C = {
  lengthsFt: [6, 8, 10, 12, 14, 16],
  /** The first row's diameter; each next row is one inch thicker. */
  smallestIn: 6,
  boardFeet: [
    [5, 5, 10, 10, 10, 20],
    [5, 10, 10, 20, 20, 30],
    [10, 10, 20, 20, 20, 30],
    [10, 20, 30, 30, 30, 40],
    [20, 30, 30, 30, 40, 60],
    [20, 30, 40, 40, 50, 70],
    [30, 40, 50, 60, 70, 80],
    [40, 50, 60, 70, 80, 100],
    [40, 60, 70, 90, 100, 110],
    [50, 70, 90, 110, 120, 140],
    [60, 80, 100, 120, 140, 160],
    [70, 90, 120, 140, 160, 180],
    [80, 110, 130, 160, 190, 210],
    [90, 120, 150, 180, 210, 240],
    [110, 140, 170, 210, 240, 280],
  ],
} as const;
