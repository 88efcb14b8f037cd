import { NoAnswer, short } from "../errors";
import { DRESSED_THICKNESSES, DRESSED_WIDTHS, TIMBER_OFF, type DressedSide } from "./softwood-sizes.table";
import { fractionText } from "./tape-text";

/** The sides that may be asked for, and other names for them. */
export const DRESSED_PARTS = { thickness: ["thick"], width: ["wide"] } as const;

/** The two sides a softwood size is called by, thickness first. */
interface Nominal {
  thicknessIn: number;
  widthIn: number;
}

/** From this nominal size both ways lumber is a timber, in inches. */
const TIMBER_IN = 5;

/**
 * Least dressed dry size of softwood lumber by its nominal name such as 2x6: one side in inches, or both as text.
 *
 * @formula boards and dimension: the standard's table; timbers: 1/2 in off 5 and 6 in, 3/4 in off 7 to 15 in, 1 in off 16 in and up
 * @source PS 20, minimum dressed dry sizes
 * @source from memory: the sides marked so; as a number they are refused, in the text they are marked
 * @range thickness 1 to 4 in by width 2 to 12 in as the standard names them; timbers 5 in and up both ways, whole inches
 * @checked 10 of 10 sizes and 3 of 3 timber allowances seen printed; 6 sizes are from memory
 */
export function dressedSize({
  nominal,
  part,
}: {
  nominal: Nominal;
  part?: keyof typeof DRESSED_PARTS | undefined;
}): number | string {
  const { thickness, width } = dressedSides(nominal);
  if (part === undefined) return `${sideText(thickness)} x ${sideText(width)}`;
  return publishedIn(part === "thickness" ? thickness : width, nominal, part);
}

function dressedSides({ thicknessIn, widthIn }: Nominal): Record<keyof typeof DRESSED_PARTS, DressedSide> {
  if (thicknessIn >= TIMBER_IN && widthIn >= TIMBER_IN)
    return { thickness: timberSide(thicknessIn), width: timberSide(widthIn) };
  return {
    thickness: sideFrom(DRESSED_THICKNESSES, thicknessIn, "thickness"),
    width: sideFrom(DRESSED_WIDTHS, widthIn, "width"),
  };
}

function sideFrom(sides: readonly DressedSide[], nominalIn: number, part: string): DressedSide {
  const side = sides.find((known) => known.nominalIn === nominalIn);
  if (!side) {
    const known = sides.map((each) => fractionText({ lengthIn: each.nominalIn, denominator: 4 })).join(", ");
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

function sideText({ dressedIn, fromMemory }: DressedSide): string {
  return `${fractionText({ lengthIn: dressedIn, denominator: 4 })}${fromMemory ? " (from memory)" : ""}`;
}

/** A number in a cell cannot say that it is from memory; a message can. */
function publishedIn({ dressedIn, fromMemory }: DressedSide, nominal: Nominal, part: string): number {
  if (fromMemory)
    throw new NoAnswer(
      `${part} of ${nominalText(nominal)} (in): no copy of the standard was seen to print it; from memory ${dressedIn}`,
    );
  return dressedIn;
}

function nominalText({ thicknessIn, widthIn }: Nominal): string {
  const [thickness, width] = [thicknessIn, widthIn].map((lengthIn) => fractionText({ lengthIn, denominator: 4 }));
  return `${thickness}x${width}`;
}
