import type { TableSheet } from "../definition";
import { FORMAT } from "../formats";

/** Without a product wanted there is nothing to plan. */
const planned = (shown: string) => `=IF(COUNTA(Table[Thickness])=0, "no product yet", ${shown})`;
const PLAN = "{Small end}, {Length}, Table[[Thickness]:[Price]], {Kerf}, {Pattern}, {name of bed clearance}:{timber}";

/** A head scale reads down to 1/32 in, which is 0.03125. */
const HEIGHT = "0.0####";

/** One log: the products wanted of it, and the passes of the saw with the heights of the head. */
export const CUT_PLAN: TableSheet = {
  title: "Cut plan",
  table: "CutProducts",
  lead: "One log: put in its size and what you want of it; the passes with the settings of the saw head stand at the right.",
  cautions: [
    "check the fit of the log in the mill and the maker's limits before sawing. A log that is turned can roll; metal in the log breaks blades.",
  ],
  settings: [
    { label: "Small end", kind: "text", value: "20", note: "inches inside bark, up and down (invented)" },
    { label: "Length", kind: "text", value: "8-6", note: "feet (invented)" },
    { label: "Kerf", kind: "text", value: "1/8", note: "inches (invented: measure a cut)" },
    { label: "Pattern", kind: "text", value: "live", note: "live, slab, cant, quarter or timber", list: "patterns" },
    {
      label: "bed clearance",
      kind: "text",
      value: "",
      note: "inches: the lowest height that clears dogs and log rests",
    },
    { label: "taper", kind: "text", value: "0.5", note: "inches of diameter in 4 ft; 0 for none" },
    { label: "trim", kind: "text", value: "", note: "inches of length to leave for trimming" },
    { label: "minimum width", kind: "text", value: "3", note: "inches" },
    { label: "guide opening", kind: "text", value: "", note: "inches between the blade guides at their widest" },
    { label: "cant widths", kind: "text", value: "", note: "inches to try for a cant, such as 4, 6, 8" },
    { label: "timber", kind: "text", value: "", note: "its sides as sawn, such as 6x8, for the pattern timber" },
  ],
  figures: [
    {
      label: "Board feet",
      formula: planned(`BOLE.CUTYIELD(${PLAN})`),
      format: FORMAT.one,
      note: "the most these products give",
    },
  ],
  columns: [
    { heading: "Thickness", kind: "text", width: 24, note: "4/4, 5/4, 8/4", list: "thicknesses" },
    { heading: "Green size", kind: "text", width: 12, note: "inches to saw; blank: 1/8 over" },
    { heading: "Price", kind: "number", width: 12, note: "a board foot; may be blank" },
    {
      heading: "Sawdust",
      formula: `=IF([@Thickness]="", "", BOLE.KERFLOSS(IF([@[Green size]]="", [@Thickness], [@[Green size]]), {Kerf}))`,
      format: "0.0%",
      width: 12,
      note: "share of the wood",
    },
  ],
  examples: [{ Thickness: "5/4" }, { Thickness: "8/4", "Green size": "2 1/4" }],
  blankRows: 6,
  beside: {
    heading: "The plan: heights of the blade above the bed in inches, at its lower side",
    formula: planned(`BOLE.CUTPLAN(${PLAN})`),
    rows: 40,
    columns: [
      { width: 13 },
      { width: 12, format: HEIGHT },
      { width: 10, format: HEIGHT },
      { width: 16 },
      { width: 9 },
      { width: 11, format: "0.0" },
      { width: 9, format: HEIGHT },
      { width: 9, format: HEIGHT },
      { width: 9, format: "0.00" },
      { width: 60 },
    ],
  },
};
