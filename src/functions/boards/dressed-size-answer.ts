import { dressedSideIn, dressedSides, type DressedPart, type Nominal } from "../../math/boards/dressed-size";
import type { DressedSide } from "../../math/boards/softwood-sizes.table";
import { inchesText } from "../../math/inches-text";

/** One side as a number, or both as text, in which a side can say that it is from memory. */
export function dressedSize({ nominal, part }: { nominal: Nominal; part?: DressedPart | undefined }): number | string {
  if (part !== undefined) return dressedSideIn(nominal, part);
  const { thickness, width } = dressedSides(nominal);
  return `${sideText(thickness)} x ${sideText(width)}`;
}

function sideText({ dressedIn, fromMemory }: DressedSide): string {
  return `${inchesText(dressedIn)}${fromMemory ? " (from memory)" : ""}`;
}
