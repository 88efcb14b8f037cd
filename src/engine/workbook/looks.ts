import type { IBorderStyleData, IStyleData } from "@univerjs/core";
import type ExcelJS from "exceljs";

/** The engine's codes for how a border is drawn and text is set. */
const BORDERS: Record<string, number> = { thin: 1, hair: 2, dotted: 3, dashed: 4, double: 7, medium: 8, thick: 13 };
const ACROSS: Record<string, number> = { left: 1, center: 2, right: 3, justify: 4 };
const UPRIGHT: Record<string, number> = { top: 1, middle: 2, bottom: 3 };
const CLIP_OVER_NEIGHBOURS = 1;
const WRAP = 3;
/** Where the file names a font that this machine lacks. */
const FALLBACKS = "Carlito, Segoe UI, Helvetica, Arial, sans-serif";

/** How a cell looks in the file, in the engine's words. */
export function looksOf(cell: ExcelJS.Cell): IStyleData {
  const { font, fill, border, alignment, numFmt } = cell;
  const style: Record<string, unknown> = {};
  if (font?.name) style["ff"] = `${font.name}, ${FALLBACKS}`;
  if (font?.size) style["fs"] = font.size;
  if (font?.bold) style["bl"] = 1;
  if (font?.italic) style["it"] = 1;
  if (font?.underline) style["ul"] = { s: 1 };
  if (font?.color?.argb) style["cl"] = colour(font.color.argb);
  if (fill?.type === "pattern" && fill.fgColor?.argb) style["bg"] = colour(fill.fgColor.argb);
  if (alignment?.horizontal) style["ht"] = ACROSS[alignment.horizontal];
  if (alignment?.vertical) style["vt"] = UPRIGHT[alignment.vertical];
  if (alignment?.indent) style["pd"] = { l: alignment.indent * 8 };
  style["tb"] = alignment?.wrapText ? WRAP : CLIP_OVER_NEIGHBOURS;
  if (numFmt && numFmt !== "General") style["n"] = { pattern: numFmt === "@" ? "@@@" : numFmt };
  if (border) style["bd"] = edges(border);
  return style as IStyleData;
}

function edges(border: Partial<ExcelJS.Borders>): Record<string, IBorderStyleData> {
  const sides = { t: border.top, r: border.right, b: border.bottom, l: border.left };
  const drawn = Object.entries(sides).flatMap(([side, edge]) =>
    edge?.style ? [[side, { s: BORDERS[edge.style] ?? 1, cl: colour(edge.color?.argb ?? "FF808080") }]] : [],
  );
  return Object.fromEntries(drawn) as Record<string, IBorderStyleData>;
}

/** `FF8C2F1B` (opacity first) to `#8C2F1B`. */
function colour(argb: string): { rgb: string } {
  return { rgb: `#${argb.slice(-6)}` };
}
