import { contentOf, shown } from "../cell";
import { HandedOn, Unreadable } from "../error";
import { declared } from "./argument";
import { NUMBER, tidied, valueOf } from "./digits";

const SIDE = String.raw`(${NUMBER}) ?(?:"|in\.?|inch|inches)?`;
const SIZE = new RegExp(`^${SIDE} ?(?:x|×|by) ?${SIDE}$`);

interface Sides {
  thicknessIn: number;
  widthIn: number;
}

/** The two sides that softwood lumber is called by, thickness first: 2x6, 5/4 x 6, 2½ by 6. A name, not a measurement. */
export const nominalSize = sides(
  { kind: "nominal size", reads: "2x6 or 5/4 x 6" },
  "thickness x width in inches, such as 2x6 or 5/4x6",
);

/** The two sides of a timber as it is sawn, either first: 6x8, 5 1/2 x 7. */
export const section = sides({ kind: "section", reads: "6x8 or 5 1/2 x 7" }, "two sides in inches, such as 6x8");

function sides(facts: { kind: string; reads: string }, wanted: string) {
  return declared<Sides>(facts, "name", (cell, as) => {
    const content = contentOf(cell);
    if (content !== null && typeof content === "object") throw new HandedOn(content.error, as);
    const [thicknessIn, widthIn] = typeof content === "string" ? sidesIn(content) : [];
    if (!thicknessIn || !widthIn) throw new Unreadable(as, wanted, shown(cell));
    return { thicknessIn, widthIn };
  });
}

function sidesIn(text: string): (number | undefined)[] {
  const [, thickness, width] = SIZE.exec(tidied(text)) ?? [];
  return [thickness, width].map((side) => (side === undefined ? undefined : valueOf(side)));
}
