import type { CellStyle } from "../../../xlsx/write/book";
import { LOOKS, PALETTE, type Appearance, type Look } from "../../looks";

/* The looks of every sheet of ours, as the file writes them. */

export type { CellStyle };

/** Colours in a file stand without their #. */
const bare = (color: string) => color.slice(1).toUpperCase();
const font = (more: CellStyle["font"] = {}): NonNullable<CellStyle["font"]> => ({
  ...{ name: "Calibri", size: 11, color: bare(PALETTE.ink) },
  ...more,
});
const line = (color: string, style = "thin") => ({ style, color: bare(color) });

/** A look as the style of a cell in the file. */
export function styleOf(look: Look): CellStyle {
  const { bold, italic, underline, size, ink, fill, wrap, indent, edge, under }: Appearance = LOOKS[look];
  const box = edge && { top: line(edge), left: line(edge), bottom: line(edge), right: line(edge) };
  const edges = box || (under && { bottom: line(under) });
  return {
    font: font({
      ...{ ...(bold && { bold }), ...(italic && { italic }), ...(underline && { underline }) },
      ...{ ...(size && { size }), ...(ink && { color: bare(ink) }) },
    }),
    ...(fill && { fill: bare(fill) }),
    ...(edges && { edges }),
    ...(wrap && { wrap }),
    ...(indent && { across: "left", indent: 1 }),
    upright: "top",
  };
}

/** What a cell looks like that nothing is said of. */
export const USUAL: CellStyle = { font: font() };
export const TITLE = styleOf("title");
export const LEAD = styleOf("lead");
export const HEADING = styleOf("heading");
export const HEADER: CellStyle = { ...styleOf("header"), upright: "center", across: "center" };
export const TEXT = styleOf("text");
/** Beside a number. */
export const UNIT: CellStyle = { ...TEXT, across: "left", indent: 1 };
export const PROSE = styleOf("prose");
export const SMALL = styleOf("note");
export const SMALL_PROSE: CellStyle = { ...SMALL, wrap: true };
export const ENTRY = styleOf("entry");
export const COMPUTED = styleOf("computed");
export const KEY = styleOf("figure");
export const CAUTION: CellStyle = { ...styleOf("caution"), edges: { left: line(PALETTE.red, "thick") } };
export const LINK = styleOf("link");

/** What a rule of Excel's own paints on a verdict that says OVER. */
export const OVER: CellStyle = { font: { bold: true, color: bare(PALETTE.red) }, fill: bare(PALETTE.paleRed) };
/** What a ticket is cut along. */
export const TICKET_EDGE = line(PALETTE.ink);
