import { NoAnswer, short } from "../errors";
import { inchesText } from "../inches-text";
import { DRESSED_THICKNESSES, DRESSED_WIDTHS, TIMBER_OFF, type DressedSide } from "./softwood-sizes.table";

/** A side of a softwood size. */
export type DressedPart = "thickness" | "width";

/** The two sides a softwood size is called by, thickness first. */
export interface Nominal {
  thicknessIn: number;
  widthIn: number;
}

/** From this nominal size both ways lumber is a timber, in inches. */
const TIMBER_IN = 5;

/**
 * Least dressed dry size of softwood lumber by its nominal name such as 2x6, both sides, and which of them are remembered.
 *
 * @formula by table: boards and dimension by the standard's table, and timbers 1/2 in off 5 and 6 in, 3/4 in off 7 to
 *   15 in, 1 in off 16 in and up
 * @source PS 20, minimum dressed dry sizes
 * @source from memory: the sides marked so; as a number they are refused, in the text they are marked
 * @range thickness 1 to 4 in by width 2 to 12 in as the standard names them; timbers 5 in and up both ways, whole inches
 * @checked 10 of 10 sizes and 3 of 3 timber allowances seen printed; 6 sizes are from memory
 */
export function dressedSides({ thicknessIn, widthIn }: Nominal): Record<DressedPart, DressedSide> {
  if (thicknessIn >= TIMBER_IN && widthIn >= TIMBER_IN)
    return { thickness: timberSide(thicknessIn), width: timberSide(widthIn) };
  return {
    thickness: sideFrom(DRESSED_THICKNESSES, thicknessIn, "thickness"),
    width: sideFrom(DRESSED_WIDTHS, widthIn, "width"),
  };
}

/** One side alone. A number in a cell cannot say that it is from memory; a message can. */
export function dressedSideIn(nominal: Nominal, part: DressedPart): number {
  const { dressedIn, fromMemory } = dressedSides(nominal)[part];
  if (!fromMemory) return dressedIn;
  const name = `${inchesText(nominal.thicknessIn)}x${inchesText(nominal.widthIn)}`;
  throw new NoAnswer(`${part} of ${name} (in): no copy of the standard was seen to print it; from memory ${dressedIn}`);
}

function sideFrom(sides: readonly DressedSide[], nominalIn: number, part: string): DressedSide {
  const side = sides.find((known) => known.nominalIn === nominalIn);
  if (!side) {
    const known = sides.map((each) => inchesText(each.nominalIn)).join(", ");
    throw new NoAnswer(
      `nominal ${part} (in; the thickness stands first): wanted ${known}, or a timber of ${TIMBER_IN} in and up both ways, got ${short(nominalIn)}`,
    );
  }
  return side;
}

function timberSide(nominalIn: number): DressedSide {
  const rule = TIMBER_OFF.find(({ fromIn }) => nominalIn >= fromIn);
  if (!rule || !Number.isInteger(nominalIn))
    throw new NoAnswer(
      `nominal side of a timber (in): wanted a whole number from ${TIMBER_IN} up, got ${short(nominalIn)}`,
    );
  return { nominalIn, dressedIn: nominalIn - rule.offIn };
}
