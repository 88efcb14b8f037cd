import type { Column, Figure, Setting, TableSheet } from "../definition";
import { FILLED, FORMAT } from "../formats";

const MEASURED: readonly Column[] = [
  { heading: "Log", kind: "text", width: 8, note: "number or tag" },
  { heading: "Date", format: FORMAT.date, width: 11, note: "it came in" },
  { heading: "Species", kind: "text", width: 20, note: "choose or type", list: "species" },
  { heading: "Came from", kind: "text", width: 19 },
  ...["Small 1", "Small 2", "Large 1", "Large 2"].map((heading): Column => ({
    heading,
    kind: "text",
    width: 8,
    note: "inches inside bark",
  })),
  { heading: "Length", kind: "text", width: 9, note: "feet; 8-6 is 8 ft 6 in" },
  { heading: "Sweep", kind: "text", width: 8, note: "inches; blank for none" },
  { heading: "Defect", kind: "number", format: "0%", width: 8, note: "share of the scale" },
];

const LOG = "[@Dia], [@Butt], [@Length]";
/** The mill must let the wider of the two readings of each end pass. */
const WIDER = (end: "Small" | "Large") => `MAX(BOLE.MEASURE([@[${end} 1]:[${end} 2]], "in"))`;

const WORKED_OUT: readonly Column[] = [
  {
    heading: "Dia",
    formula: "=BOLE.SCALEDIAMETER([@[Small 1]:[Small 2]], {Rounding of the diameter})",
    format: FILLED.two,
    width: 9,
    note: "inches, small end",
  },
  {
    heading: "Butt",
    formula: "=BOLE.SCALEDIAMETER([@[Large 1]:[Large 2]])",
    format: FILLED.two,
    width: 9,
    note: "inches, large end",
  },
  {
    heading: "Scaled ft",
    formula: "=BOLE.SCALELENGTH([@Length], {Trim left on every log})",
    format: FILLED.whole,
    width: 9,
    note: "feet that count",
  },
  {
    heading: "Board feet",
    formula: "=BOLE.LOGSCALE([@Dia], [@[Scaled ft]], {Log rule})",
    format: FILLED.whole,
    width: 9,
    note: "by the rule above",
  },
  {
    heading: "Net",
    formula: "=BOLE.NETSCALE([@[Board feet]], [@Defect])",
    format: FILLED.whole,
    width: 9,
    note: "board feet",
  },
  { heading: "Cubic ft", formula: `=BOLE.SMALIAN(${LOG})`, format: FILLED.one, width: 9, note: "Smalian" },
  {
    heading: "Weight lb",
    formula: `=BOLE.LOGWEIGHT([@Species], ${LOG}, , "with")`,
    format: FILLED.whole,
    width: 10,
    note: "green, with bark",
  },
  {
    heading: "Could be lb",
    formula: `=BOLE.LOGWEIGHT([@Species], ${LOG}, , "with", "high")`,
    format: FILLED.whole,
    width: 11,
    caution: "lift and load by this one",
  },
  {
    heading: "Room inches",
    formula: `=IF([@[Small 1]]="", "", BOLE.THROATFIT({Mill opening}, ${WIDER("Small")}, ${WIDER("Large")}, [@Length], [@Sweep], {Room to keep}))`,
    format: FORMAT.one,
    width: 10,
    caution: "minus: it will not pass",
  },
  {
    heading: "Verdict",
    formula: `=IF([@[Room inches]]="", "", IF([@[Room inches]]<0, "OVER the opening", IF([@[Could be lb]]>{Loader limit}, "OVER the loader", "fits")))`,
    width: 18,
    note: "by mill and loader",
    marksOver: true,
  },
];

const NOTE: Column = { heading: "Note", kind: "text", width: 30 };

const SETTINGS: readonly Setting[] = [
  {
    label: "Log rule",
    kind: "text",
    value: "International 1/4",
    name: "Rule",
    list: "rules",
    note: "agree on it before you agree on a price",
  },
  {
    label: "Trim left on every log",
    kind: "text",
    value: "3",
    name: "Trim_allowance",
    note: "inches; what is left counts down to whole feet",
  },
  {
    label: "Rounding of the diameter",
    kind: "text",
    value: "none",
    name: "Dia_rounding",
    list: "roundings",
    note: "none, nearest or down: local custom decides",
  },
  {
    label: "Loader limit",
    kind: "number",
    value: 4000,
    format: FORMAT.whole,
    name: "Loader_limit",
    note: "pounds at its reach (invented: see the maker's chart)",
  },
];

/** What the sample says on its sheet of the mill. */
const MILL: readonly Setting[] = [
  {
    label: "Mill opening",
    kind: "text",
    value: "36",
    name: "Mill_opening",
    note: "inches, clear between the posts and under the beam (invented)",
  },
  { label: "Room to keep", kind: "text", value: "1", name: "Opening_clearance", note: "inches round a log (invented)" },
];

const FIGURES: readonly Figure[] = [
  { label: "Logs", formula: "=COUNTA(Table[Log])", format: FORMAT.whole, name: "Key_logs", note: "" },
  {
    label: "Net board feet",
    formula: "=SUM(Table[Net])",
    format: FORMAT.whole,
    name: "Key_net_board_feet",
    note: "defects taken off",
  },
  {
    label: "Heaviest log, lb",
    formula: "=MAX(Table[Weight lb])",
    format: FORMAT.whole,
    name: "Key_heaviest_log",
    note: "green, an estimate",
  },
  {
    label: "Logs the mill refuses",
    formula: '=COUNTIF(Table[Room inches], "<0")',
    format: FORMAT.whole,
    name: "Key_logs_over_opening",
    note: "too wide for the opening",
  },
];

/** What lies in the yard: scale, volume, weight and fit of every log. */
export const LOG_BOOK: TableSheet = {
  title: "Log book",
  heading: "Log book: what is in each log, and does the mill take it",
  table: "LogBook",
  lead: "One row a log: what it scales, what it weighs, whether it goes through the mill. Read the diameter two ways across each end. Type into the tinted cells.",
  cautions: [
    "weights are estimates from species and size. Lift and haul by the higher figure, weigh before pulling, and stay under the limits of crane, slings and vehicle.",
    "city trees hide metal: scan every face after every cut. Ash, oak, walnut and elm with bark on may fall under a quarantine: ask your state before a log crosses a county line.",
  ],
  settings: [...SETTINGS, ...MILL],
  figures: FIGURES,
  valueColumn: 4,
  figuresFrom: { label: 14, value: 17 },
  frozenColumns: 1,
  columns: [...MEASURED, ...WORKED_OUT, NOTE],
  examples: [
    {
      Log: "A1",
      Species: "red maple",
      "Came from": "example, invented",
      "Small 1": "20 1/2",
      "Small 2": "19 1/2",
      "Large 1": "24",
      "Large 2": "23",
      Length: "8-6",
      Defect: 0.1,
    },
  ],
  blankRows: 19,
  print: { newPageAt: ["Dia"] },
};

/** The same in a yard that keeps its loads and its money on other sheets. */
export function logBookOf(table: string, own: readonly Column[], rows: TableSheet["examples"]): TableSheet {
  return {
    ...LOG_BOOK,
    table,
    columns: [...MEASURED, ...own, ...WORKED_OUT, NOTE],
    figuresFrom: { label: 14 + own.length, value: 17 + own.length },
    settings: SETTINGS,
    examples: rows,
  };
}
