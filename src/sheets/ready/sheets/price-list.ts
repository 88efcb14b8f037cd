import { FORMAT, type ReadySheet } from "../ready-sheet";

/** What to ask for a board foot, and what each price leaves. */
export const PRICE_LIST: ReadySheet = {
  title: "Price list",
  table: "PriceList",
  lead: "What a board foot costs you, what to ask for it, and what is left. A margin is a share of the price, not of the cost.",
  cautions: [
    "nothing here is graded for structural use. A joist, post, stair or guard needs what the local code asks for.",
  ],
  settings: [
    { label: "Margin wanted", kind: "text", value: "45%", note: "share of the price left after the cost (invented)" },
  ],
  figures: [],
  columns: [
    { heading: "Species", kind: "text", width: 24, note: "choose or type", list: "species" },
    { heading: "Thickness", kind: "text", width: 11, note: "4/4, 5/4, 8/4", list: "thicknesses" },
    { heading: "Kind", kind: "text", width: 20, note: "grade, cut, air or kiln dry" },
    { heading: "Cost", kind: "number", format: "#,##0.00", width: 10, note: "a board foot, all in" },
    {
      heading: "For the margin",
      kind: "computed",
      formula: "=IF([@Cost]=0, 0, BOLE.LISTPRICE([@Cost], {Margin wanted}))",
      format: FORMAT.money,
      width: 12,
      note: "price a board foot",
    },
    { heading: "Asked", kind: "number", format: "#,##0.00", width: 10, note: "your price a board foot" },
    {
      heading: "Margin got",
      kind: "computed",
      formula: `=IF([@Asked]=0, "", BOLE.MARGIN([@Asked], [@Cost]))`,
      format: "0.0%",
      width: 11,
      note: "share of your price",
    },
    {
      heading: "8 ft of 8 in",
      kind: "computed",
      formula: `=IF([@Thickness]="", 0, BOLE.BOARDFEET([@Thickness], 8, 8)*[@Asked])`,
      format: FORMAT.money,
      width: 12,
      note: "what such a board comes to",
    },
  ],
  examples: [
    { Species: "black walnut", Thickness: "5/4", Kind: "example, invented", Cost: 4.4, Asked: 8.5 },
    { Species: "red maple", Thickness: "4/4", Kind: "example, invented", Cost: 2.1, Asked: 3.5 },
  ],
  blankRows: 18,
};
