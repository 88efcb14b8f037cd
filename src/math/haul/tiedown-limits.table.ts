/**
 * Working load limits of tie-down gear that bears no mark, in pounds.
 *
 * Two copies of the chain table agree cell for cell, also on grade 80 at 5/16 in, which is printed below grade 70 of the
 * same size. Webbing and wire rope were seen in one copy. Rope of fiber, steel strapping and wire rope over 3/4 in were
 * not seen.
 *
 * @source 49 CFR 393.108, tables
 *
 * Columns: gear; grade, 0 where it has none; size in inches; size in millimeters; pounds
 */
export const TIEDOWN_LIMITS = [
  ["chain", 30, 1 / 4, 7, 1300],
  ["chain", 43, 1 / 4, 7, 2600],
  ["chain", 70, 1 / 4, 7, 3150],
  ["chain", 80, 1 / 4, 7, 3500],
  ["chain", 100, 1 / 4, 7, 4300],
  ["chain", 30, 5 / 16, 8, 1900],
  ["chain", 43, 5 / 16, 8, 3900],
  ["chain", 70, 5 / 16, 8, 4700],
  ["chain", 80, 5 / 16, 8, 4500],
  ["chain", 100, 5 / 16, 8, 5700],
  ["chain", 30, 3 / 8, 10, 2650],
  ["chain", 43, 3 / 8, 10, 5400],
  ["chain", 70, 3 / 8, 10, 6600],
  ["chain", 80, 3 / 8, 10, 7100],
  ["chain", 100, 3 / 8, 10, 8800],
  ["chain", 30, 7 / 16, 11, 3700],
  ["chain", 43, 7 / 16, 11, 7200],
  ["chain", 70, 7 / 16, 11, 8750],
  ["chain", 30, 1 / 2, 13, 4500],
  ["chain", 43, 1 / 2, 13, 9200],
  ["chain", 70, 1 / 2, 13, 11300],
  ["chain", 80, 1 / 2, 13, 12000],
  ["chain", 100, 1 / 2, 13, 15000],
  ["chain", 30, 5 / 8, 16, 6900],
  ["chain", 43, 5 / 8, 16, 13000],
  ["chain", 70, 5 / 8, 16, 15800],
  ["chain", 80, 5 / 8, 16, 18100],
  ["chain", 100, 5 / 8, 16, 22600],
  ["webbing", 0, 1.75, 45, 1750],
  ["webbing", 0, 2, 50, 2000],
  ["webbing", 0, 3, 75, 3000],
  ["webbing", 0, 4, 100, 4000],
  ["wire rope", 0, 1 / 4, 7, 1400],
  ["wire rope", 0, 5 / 16, 8, 2100],
  ["wire rope", 0, 3 / 8, 10, 3000],
  ["wire rope", 0, 7 / 16, 11, 4100],
  ["wire rope", 0, 1 / 2, 13, 5300],
  ["wire rope", 0, 5 / 8, 16, 8300],
  ["wire rope", 0, 3 / 4, 20, 10900],
] as const;

/** Check totals: pounds of the chain cells, and of all. */
export const TIEDOWN_LIMITS_TOTALS = { rows: 39, chainLb: 214150, allLb: 260000 };
