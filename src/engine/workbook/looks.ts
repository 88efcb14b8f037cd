import type { IBorderStyleData, IStyleData } from "@univerjs/core";
import type { CellLook, Side } from "../../xlsx/styles";

/** The engine's codes for how a border is drawn and text is set. */
export const BORDERS: Record<string, number> = {
  thin: 1,
  hair: 2,
  dotted: 3,
  dashed: 4,
  double: 7,
  medium: 8,
  thick: 13,
};
export const ACROSS: Record<string, number> = { left: 1, center: 2, right: 3, justify: 4 };
export const UPRIGHT: Record<string, number> = { top: 1, center: 2, bottom: 3 };
const CLIP_OVER_NEIGHBOURS = 1;
export const WRAP = 3;
/** Where the file names a font that this machine lacks. */
const FALLBACKS = "Carlito, Segoe UI, Helvetica, Arial, sans-serif";

export const SIDES: Readonly<Record<Side, string>> = { top: "t", right: "r", bottom: "b", left: "l" };
const GREY = "808080";

/** How a cell looks in the file, in the engine's words. */
export function looksOf({ font, fill, edges, across, upright, indent, wrap, numberFormat }: CellLook): IStyleData {
  const style: Record<string, unknown> = {};
  if (font?.name) style["ff"] = `${font.name}, ${FALLBACKS}`;
  if (font?.size) style["fs"] = font.size;
  if (font?.bold) style["bl"] = 1;
  if (font?.italic) style["it"] = 1;
  if (font?.underline) style["ul"] = { s: 1 };
  if (font?.color) style["cl"] = { rgb: `#${font.color}` };
  if (fill) style["bg"] = { rgb: `#${fill}` };
  if (across) style["ht"] = ACROSS[across];
  if (upright) style["vt"] = UPRIGHT[upright];
  if (indent) style["pd"] = { l: indent * 8 };
  style["tb"] = wrap ? WRAP : CLIP_OVER_NEIGHBOURS;
  if (numberFormat !== "General") style["n"] = { pattern: numberFormat === "@" ? "@@@" : numberFormat };
  style["bd"] = drawn(edges);
  return style as IStyleData;
}

function drawn(edges: CellLook["edges"]): Record<string, IBorderStyleData> {
  const sides = Object.entries(edges).map(([side, { style, color }]) => [
    SIDES[side as Side],
    { s: BORDERS[style] ?? 1, cl: { rgb: `#${color ?? GREY}` } },
  ]);
  return Object.fromEntries(sides) as Record<string, IBorderStyleData>;
}
