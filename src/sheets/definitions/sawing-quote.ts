import type { TableSheet } from "../definition";
import { FILLED, FORMAT } from "../formats";

/** A log is sawn by its best plan of the boards and the kerf of this sheet. */
const LOG = "[@[Small end]], [@Length], {Boards}, {Kerf}";
const HOW = 'IF([@Pattern]="", "live", [@Pattern]), {name of cant widths}:{cant widths}';
const ofLog = (shown: string) => `=IF([@[Small end]]="", 0, ${shown})`;

/** What custom sawing of a customer's logs will cost, worked out before the first cut. */
export const SAWING_QUOTE: TableSheet = {
  title: "Sawing quote",
  table: "SawingQuote",
  lead: "A quote for sawing a customer's logs, before the sawing: type each log; the plan gives its feet and hours. Price by the foot, by the hour, or both.",
  cautions: [
    "a quote rests on sound logs: rot, metal, sweep and crook take feet away and add hours. Say in writing who pays for a blade that hits metal, and for how long the quote holds.",
  ],
  settings: [
    { label: "Customer", kind: "text", value: "Example, invented", note: "" },
    { label: "Day", kind: "text", value: "", note: "" },
    { label: "Boards", kind: "text", value: "4/4", note: "thickness wanted", list: "thicknesses" },
    { label: "Kerf", kind: "text", value: "1/8", note: "inches; measure a cut" },
    { label: "cant widths", kind: "text", value: "6, 8, 10", note: "inches to try where a log is sawn to a cant" },
    { label: "Feed", kind: "number", value: 20, note: "feet a minute through the log (invented: time yourself)" },
    { label: "Handling", kind: "number", value: 1.5, note: "minutes a pass (invented: time yourself)" },
    { label: "Turning", kind: "number", value: 6, note: "minutes a turn (invented: time yourself)" },
    { label: "Rate a board foot", kind: "number", value: 0.55, note: "money (invented)" },
    { label: "Rate an hour", kind: "number", value: "", note: "money; with it the hours are charged too" },
    { label: "Blades", kind: "number", value: 1, note: "that the work may take (invented)" },
    { label: "Price of a blade", kind: "number", value: 28, note: "money (invented)" },
    { label: "May be off by", kind: "number", value: 0.15, format: "0%", note: "for the low and the high (invented)" },
  ],
  figures: [
    { label: "Board feet", formula: "=SUM(Table[Board feet])", format: FORMAT.whole, note: "by the best plans" },
    {
      label: "Hours at the mill",
      formula: "=SUM(Table[Hours])",
      format: FORMAT.one,
      note: "loading and stacking aside",
    },
    {
      label: "Likely",
      formula:
        '=BOLE.SAWFEE({Board feet}, {Rate a board foot}, IF({Rate an hour}="", 0, {Hours at the mill}), {Rate an hour}, {Blades}, {Price of a blade})',
      format: FORMAT.money,
      note: "before tax",
    },
    { label: "Low", formula: "=ROUND({Likely}*(1-{May be off by}), 2)", format: FORMAT.money, note: "" },
    { label: "High", formula: "=ROUND({Likely}*(1+{May be off by}), 2)", format: FORMAT.money, note: "" },
  ],
  columns: [
    { heading: "Log", kind: "text", width: 22, note: "number and species" },
    { heading: "Small end", kind: "text", width: 14, note: "inches inside bark" },
    { heading: "Length", kind: "text", width: 11, note: "feet; 8-6 is 8 ft 6 in" },
    { heading: "Pattern", kind: "text", width: 11, note: "live if blank", list: "patterns" },
    {
      heading: "Board feet",
      formula: ofLog(`BOLE.CUTYIELD(${LOG}, ${HOW})`),
      format: FILLED.one,
      width: 12,
      note: "of the best plan",
    },
    {
      heading: "Hours",
      formula: ofLog(`BOLE.LOGHOURS(${LOG}, {Feed}, {Handling}, {Turning}, ${HOW})`),
      format: FILLED.two,
      width: 10,
      note: "of its passes and turns",
    },
  ],
  examples: [
    { Log: "1, white oak, invented", "Small end": "20", Length: "8-6", Pattern: "live" },
    { Log: "2, white oak, invented", "Small end": "17 1/2", Length: "10", Pattern: "cant" },
  ],
  blankRows: 12,
  print: { upright: true },
};
