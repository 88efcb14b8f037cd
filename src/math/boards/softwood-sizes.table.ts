/** A nominal side of softwood lumber and its least dressed dry size, in inches. */
export interface DressedSide {
  nominalIn: number;
  dressedIn: number;
  /** Set where no copy of the standard was seen to print the figure. */
  fromMemory?: true;
}

/** Minimum dressed dry thicknesses of boards and dimension, American Softwood Lumber Standard PS 20 (seen in copies). */
export const DRESSED_THICKNESSES: readonly DressedSide[] = [
  { nominalIn: 1, dressedIn: 3 / 4 },
  { nominalIn: 1 + 1 / 4, dressedIn: 1, fromMemory: true },
  { nominalIn: 1 + 1 / 2, dressedIn: 1 + 1 / 4, fromMemory: true },
  { nominalIn: 2, dressedIn: 1 + 1 / 2 },
  { nominalIn: 2 + 1 / 2, dressedIn: 2, fromMemory: true },
  { nominalIn: 3, dressedIn: 2 + 1 / 2, fromMemory: true },
  { nominalIn: 3 + 1 / 2, dressedIn: 3, fromMemory: true },
  { nominalIn: 4, dressedIn: 3 + 1 / 2 },
];

/** Minimum dressed dry widths of boards and dimension, the same standard. */
export const DRESSED_WIDTHS: readonly DressedSide[] = [
  { nominalIn: 2, dressedIn: 1 + 1 / 2 },
  { nominalIn: 3, dressedIn: 2 + 1 / 2 },
  { nominalIn: 4, dressedIn: 3 + 1 / 2 },
  { nominalIn: 5, dressedIn: 4 + 1 / 2, fromMemory: true },
  { nominalIn: 6, dressedIn: 5 + 1 / 2 },
  { nominalIn: 8, dressedIn: 7 + 1 / 4 },
  { nominalIn: 10, dressedIn: 9 + 1 / 4 },
  { nominalIn: 12, dressedIn: 11 + 1 / 4 },
];

/** How much smaller than nominal a dressed side of a timber (5 in and up both ways) may be, PS 20-05. */
export const TIMBER_OFF: readonly { fromIn: number; offIn: number }[] = [
  { fromIn: 16, offIn: 1 },
  { fromIn: 7, offIn: 3 / 4 },
  { fromIn: 5, offIn: 1 / 2 },
];

/** Column sums, added up from the figures apart from the rows above. */
export const DRESSED_TOTALS = { thicknessIn: 15.5, widthIn: 45.25 };
