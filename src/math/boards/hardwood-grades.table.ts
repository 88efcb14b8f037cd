/**
 * What the hardwood grades ask of a board's size and of its clear cuttings, the best first.
 *
 * Three independent summaries agree on the first three, two on No. 3A Common. FAS One Face and Selects, which need both
 * faces graded, and No. 3B Common, seen once, are left out.
 *
 * @source AHEC grades, FAS to No. 2 Common; No. 3A Common from two lumber dealers' summaries
 *
 * Columns: grade; least width in inches and length in feet of the board; least cuttings, each width in inches and length in
 * feet; cutting units wanted for each square foot of surface measure; what is added to the surface measure, and divided
 * by, for the number of cuttings; the most cuttings
 */
export const HARDWOOD_GRADES = [
  ["FAS", 6, 8, [[4, 5], [3, 7]], 10, 0, 4, 4],
  ["No. 1 Common", 3, 4, [[4, 2], [3, 3]], 8, 1, 3, 5],
  ["No. 2A Common", 3, 4, [[3, 2]], 6, 0, 2, 7],
  ["No. 3A Common", 3, 4, [[3, 2]], 4, 0, 1, Infinity],
] as const;
