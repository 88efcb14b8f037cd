import { contentOf, shown } from "../cell";
import { HandedOn, Unreadable } from "../error";
import { declared } from "./argument";
import { NUMBER, tidied, valueOf } from "./digits";

const SIDE = String.raw`(${NUMBER}) ?(?:"|in\.?|inch|inches)?`;
const SIZE = new RegExp(`^${SIDE} ?(?:x|×|by) ?${SIDE}$`);

/** The two sides that softwood lumber is called by, thickness first: 2x6, 5/4 x 6, 2½ by 6. A name, not a measurement. */
export const nominalSize = declared<{ thicknessIn: number; widthIn: number }>(
  { kind: "nominal size", reads: "2x6 or 5/4 x 6" },
  "name",
  (cell, as) => {
    const content = contentOf(cell);
    if (content !== null && typeof content === "object") throw new HandedOn(content.error, as);
    const [thicknessIn, widthIn] = typeof content === "string" ? sidesIn(content) : [];
    if (!thicknessIn || !widthIn)
      throw new Unreadable(as, "thickness x width in inches, such as 2x6 or 5/4x6", shown(cell));
    return { thicknessIn, widthIn };
  },
);

function sidesIn(text: string): (number | undefined)[] {
  const [, thickness, width] = SIZE.exec(tidied(text)) ?? [];
  return [thickness, width].map((side) => (side === undefined ? undefined : valueOf(side)));
}
