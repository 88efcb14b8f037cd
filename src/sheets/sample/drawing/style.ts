import type { Border, Borders, Fill, Font, Style } from "exceljs";

/* One plain style for every sheet. Entry cells have an outline and a tint, so they stand out in black and white too. */

const INK = "FF22303A";
const SLATE = "FF3B4F5C";
const PALE_SLATE = "FFE4EAED";
const STRAW = "FFFBF5DD";
const STRAW_EDGE = "FFB9A76A";
const BRICK = "FF8C2F1B";
const PALE_BRICK = "FFFBEAE5";
const GREY = "FF6A747A";

const font = (more: Partial<Font> = {}): Partial<Font> => ({
  name: "Calibri",
  size: 11,
  color: { argb: INK },
  ...more,
});
const fill = (argb: string): Fill => ({ type: "pattern", pattern: "solid", fgColor: { argb } });
const edge = (argb: string): Partial<Border> => ({ style: "thin", color: { argb } });
const box = (argb: string): Partial<Borders> => ({
  top: edge(argb),
  left: edge(argb),
  bottom: edge(argb),
  right: edge(argb),
});

export type CellStyle = Partial<Style>;

export const TITLE: CellStyle = { font: font({ size: 18, bold: true }) };
export const LEAD: CellStyle = {
  font: font({ color: { argb: GREY } }),
  alignment: { wrapText: true, vertical: "top" },
};
export const HEADING: CellStyle = { font: font({ size: 13, bold: true }), border: { bottom: edge(SLATE) } };
export const HEADER: CellStyle = {
  font: font({ bold: true, color: { argb: "FFFFFFFF" } }),
  fill: fill(SLATE),
  alignment: { wrapText: true, vertical: "middle", horizontal: "center" },
};
export const TEXT: CellStyle = { font: font(), alignment: { vertical: "top" } };
/** Beside a number. */
export const UNIT: CellStyle = { font: font(), alignment: { vertical: "top", horizontal: "left", indent: 1 } };
export const PROSE: CellStyle = { font: font(), alignment: { wrapText: true, vertical: "top" } };
export const SMALL: CellStyle = {
  font: font({ size: 9, color: { argb: GREY } }),
  alignment: { vertical: "top", horizontal: "left", indent: 1 },
};
export const SMALL_PROSE: CellStyle = { ...SMALL, alignment: { ...SMALL.alignment, wrapText: true } };
export const ENTRY: CellStyle = {
  font: font(),
  fill: fill(STRAW),
  border: box(STRAW_EDGE),
  alignment: { vertical: "top" },
};
export const COMPUTED: CellStyle = {
  font: font(),
  border: { bottom: edge(PALE_SLATE) },
  alignment: { vertical: "top" },
};
export const KEY: CellStyle = { ...COMPUTED, font: font({ bold: true }), fill: fill(PALE_SLATE) };
export const CAUTION: CellStyle = {
  font: font({ color: { argb: BRICK }, bold: true }),
  fill: fill(PALE_BRICK),
  border: { left: { style: "thick", color: { argb: BRICK } } },
  alignment: { wrapText: true, vertical: "top" },
};
/** What a rule of Excel's own paints on a verdict that says OVER. */
export const OVER: CellStyle = { font: { bold: true, color: { argb: BRICK } }, fill: bgFill(PALE_BRICK) };

export const LINK: CellStyle = {
  font: font({ underline: true, color: { argb: "FF1F5A87" } }),
  alignment: { vertical: "top" },
};

/** What a ticket is cut along. */
export const TICKET_EDGE: Partial<Border> = edge(SLATE);

/** A conditional format takes its colour from the background slot. */
function bgFill(argb: string): Fill {
  return { type: "pattern", pattern: "solid", bgColor: { argb } };
}

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
