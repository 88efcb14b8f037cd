import type { Column, Figure } from "../definition";
import { FORMAT } from "../formats";

/** One board in whole surface feet, as graders tally it, and without rounding. */
export const FEET_OF_A_BOARD: readonly Column[] = [
  { heading: "Tally bf", width: 9, formula: "=BOLE.TALLY([@Width], [@Length], [@Thickness])", format: FORMAT.whole },
  { heading: "Exact bf", width: 10, formula: "=BOLE.BOARDFEET([@Thickness], [@Width], [@Length])", format: FORMAT.two },
];

/** Board feet of a slab from its columns of widths, by a custom of measuring. */
export function slabFeet(widths: string, method: string): string {
  return `=BOLE.SLABFEET([@Thickness], ${widths}, [@Length], ${method})`;
}

/** What a slab weighs off the saw. */
export const GREEN_WEIGHT = "=BOLE.LUMBERWEIGHT([@Species], [@[Board feet]])";

export const HEAVIEST_SLAB: Figure = {
  label: "Heaviest slab, lb",
  formula: "=MAX(Table[Green lb])",
  format: FORMAT.whole,
  note: "get help or a machine: this is the weight off the saw",
};
