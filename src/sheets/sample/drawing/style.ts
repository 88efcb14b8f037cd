import type { CellStyle } from "../../../xlsx/write/book";

/* One plain style for every sheet. Entry cells have an outline and a tint, so they stand out in black and white too. */

const INK = "22303A";
const SLATE = "3B4F5C";
const PALE_SLATE = "E4EAED";
const STRAW = "FBF5DD";
const STRAW_EDGE = "B9A76A";
const BRICK = "8C2F1B";
const PALE_BRICK = "FBEAE5";
const GREY = "6A747A";

const font = (more: CellStyle["font"] = {}): NonNullable<CellStyle["font"]> => ({
  name: "Calibri",
  size: 11,
  color: INK,
  ...more,
});
const edge = (color: string) => ({ style: "thin", color });
const box = (color: string): CellStyle["edges"] => ({
  top: edge(color),
  left: edge(color),
  bottom: edge(color),
  right: edge(color),
});

export type { CellStyle };

/** What a cell looks like that nothing is said of. */
export const USUAL: CellStyle = { font: font() };
export const TITLE: CellStyle = { font: font({ size: 18, bold: true }) };
export const LEAD: CellStyle = {
  font: font({ color: GREY }),
  wrap: true,
  upright: "top",
};
export const HEADING: CellStyle = { font: font({ size: 13, bold: true }), edges: { bottom: edge(SLATE) } };
export const HEADER: CellStyle = {
  font: font({ bold: true, color: "FFFFFF" }),
  fill: SLATE,
  wrap: true,
  upright: "center",
  across: "center",
};
export const TEXT: CellStyle = { font: font(), upright: "top" };
/** Beside a number. */
export const UNIT: CellStyle = { font: font(), upright: "top", across: "left", indent: 1 };
export const PROSE: CellStyle = { font: font(), wrap: true, upright: "top" };
export const SMALL: CellStyle = {
  font: font({ size: 9, color: GREY }),
  upright: "top",
  across: "left",
  indent: 1,
};
export const SMALL_PROSE: CellStyle = { ...SMALL, wrap: true };
export const ENTRY: CellStyle = {
  font: font(),
  fill: STRAW,
  edges: box(STRAW_EDGE),
  upright: "top",
};
export const COMPUTED: CellStyle = {
  font: font(),
  edges: { bottom: edge(PALE_SLATE) },
  upright: "top",
};
export const KEY: CellStyle = { ...COMPUTED, font: font({ bold: true }), fill: PALE_SLATE };
export const CAUTION: CellStyle = {
  font: font({ color: BRICK, bold: true }),
  fill: PALE_BRICK,
  edges: { left: { style: "thick", color: BRICK } },
  wrap: true,
  upright: "top",
};
/** What a rule of Excel's own paints on a verdict that says OVER. */
export const OVER: CellStyle = { font: { bold: true, color: BRICK }, fill: PALE_BRICK };

export const LINK: CellStyle = {
  font: font({ underline: true, color: "1F5A87" }),
  upright: "top",
};

/** What a ticket is cut along. */
export const TICKET_EDGE = edge(SLATE);

export const FORMAT = {
  text: "@",
  whole: "#,##0",
  one: "#,##0.0",
  two: "#,##0.00",
  three: "0.000",
  four: "0.0000",
  money: "$#,##0.00",
  moneyWhole: "$#,##0",
  share: "0.0%",
  date: "yyyy-mm-dd",
} as const;
