/** A nominal thickness of hardwood and what is left of it after surfacing; no figure where none was printed. */
export interface HardwoodThickness {
  quarters?: string;
  nominalIn: number;
  surfacedOneSideIn?: number;
  surfacedTwoSidesIn?: number;
  surfacedTwoSidesFromMemoryIn?: number;
}

/**
 * Standard thicknesses of hardwood lumber: rough, surfaced one side, surfaced two sides, all in inches.
 * Source: two trade tables that agree on every figure. The one figure nobody saw in print stands in its own column.
 */
export const HARDWOOD_THICKNESSES: readonly HardwoodThickness[] = [
  { nominalIn: 3 / 8, surfacedOneSideIn: 1 / 4, surfacedTwoSidesIn: 3 / 16 },
  { nominalIn: 1 / 2, surfacedOneSideIn: 3 / 8, surfacedTwoSidesIn: 5 / 16 },
  { nominalIn: 5 / 8, surfacedOneSideIn: 1 / 2, surfacedTwoSidesIn: 7 / 16 },
  { quarters: "3/4", nominalIn: 3 / 4, surfacedOneSideIn: 5 / 8, surfacedTwoSidesIn: 9 / 16 },
  { quarters: "4/4", nominalIn: 1, surfacedOneSideIn: 7 / 8, surfacedTwoSidesIn: 13 / 16 },
  { quarters: "5/4", nominalIn: 1 + 1 / 4, surfacedOneSideIn: 1 + 1 / 8, surfacedTwoSidesIn: 1 + 1 / 16 },
  { quarters: "6/4", nominalIn: 1 + 1 / 2, surfacedOneSideIn: 1 + 3 / 8, surfacedTwoSidesIn: 1 + 5 / 16 },
  { quarters: "7/4", nominalIn: 1 + 3 / 4, surfacedTwoSidesIn: 1 + 1 / 2 },
  { quarters: "8/4", nominalIn: 2, surfacedOneSideIn: 1 + 13 / 16, surfacedTwoSidesIn: 1 + 3 / 4 },
  { quarters: "10/4", nominalIn: 2 + 1 / 2, surfacedTwoSidesFromMemoryIn: 2 + 1 / 4 },
  { quarters: "12/4", nominalIn: 3, surfacedOneSideIn: 2 + 13 / 16, surfacedTwoSidesIn: 2 + 3 / 4 },
  { quarters: "14/4", nominalIn: 3 + 1 / 2, surfacedTwoSidesIn: 3 + 1 / 4 },
  { quarters: "16/4", nominalIn: 4, surfacedOneSideIn: 3 + 13 / 16, surfacedTwoSidesIn: 3 + 3 / 4 },
];

/** Column sums, added up from the printed figures apart from the rows above; memory left out. */
export const HARDWOOD_THICKNESS_TOTALS = { nominalIn: 22.75, surfacedOneSideIn: 13.5625, surfacedTwoSidesIn: 17.6875 };
