import type { TableSheet } from "../definition";
import { FILLED, FORMAT } from "../formats";

/** A bill for sawing somebody else's logs. */
export const SAWING_BILL: TableSheet = {
  title: "Sawing bill",
  table: "SawingBill",
  lead: "A bill for sawing a customer's logs: by the board foot, by the hour, or both, and for blades that hit metal.",
  cautions: [
    "expect metal in a log from a yard, street or fence row, and agree before sawing who pays for a blade. Boards are not graded for structural use.",
  ],
  settings: [
    { label: "Customer", kind: "text", value: "Example, invented", note: "" },
    { label: "Day", kind: "text", value: "", note: "" },
    { label: "Rate a board foot", kind: "number", value: 0.55, note: "money (invented)" },
    { label: "Hours", kind: "number", value: "", note: "billed beside the feet, or instead of them" },
    { label: "Rate an hour", kind: "number", value: 95, note: "money (invented)" },
    { label: "Blades spoiled", kind: "number", value: 1, note: "by metal in the log (invented)" },
    { label: "Price of a blade", kind: "number", value: 28, note: "money (invented)" },
  ],
  figures: [
    { label: "Board feet sawn", formula: "=SUM(Table[Board feet])", format: FORMAT.one, note: "by the tally below" },
    {
      label: "To pay",
      formula:
        "=BOLE.SAWFEE({Board feet sawn}, {Rate a board foot}, {Hours}, {Rate an hour}, {Blades spoiled}, {Price of a blade})",
      format: FORMAT.money,
      note: "before tax",
    },
  ],
  columns: [
    { heading: "What", kind: "text", width: 24, note: "species, log" },
    { heading: "Thickness", kind: "text", width: 18, note: "under 1 in counts as 1 in", list: "thicknesses" },
    { heading: "Width", kind: "text", width: 10, note: "inches" },
    { heading: "Length", kind: "text", width: 10, note: "feet; 8-6 is 8 ft 6 in" },
    { heading: "Count", kind: "number", width: 8, note: "boards of this size" },
    {
      heading: "Board feet",
      formula: "=BOLE.BOARDFEET([@Thickness], [@Width], [@Length], [@Count])",
      format: FILLED.one,
      width: 12,
      note: "of the line",
    },
  ],
  examples: [
    { What: "Example, invented", Thickness: "4/4", Width: "8", Length: "10", Count: 12 },
    { What: "Example, invented", Thickness: "8/4", Width: "11 1/2", Length: "8-6", Count: 3 },
  ],
  blankRows: 18,
};
