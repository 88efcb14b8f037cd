import { ALWAYS, FORMAT, type ReadySheet } from "../ready-sheet";
import { LOG, SIZES, WEIGHT } from "./log-columns";

/** What lies in the yard: scale, volume, weight and fit of every log. */
export const LOG_BOOK: ReadySheet = {
  title: "Log book",
  table: "LogBook",
  lead: "Every log once: what it scales, what it weighs, whether it goes through the mill. Type into the tinted cells.",
  cautions: [
    "weights are estimates from species and size. Lift and haul by the higher figure, weigh before pulling, and stay under the limits of crane, slings and vehicle.",
  ],
  settings: [
    {
      label: "Mill opening",
      kind: "text",
      value: "36",
      note: "inches, clear between the posts and under the beam (invented: put in yours)",
    },
  ],
  figures: [
    { label: "Net board feet", formula: "=SUM(Table[Net])", format: ALWAYS.whole, note: "all logs, defects taken off" },
    {
      label: "Pounds at most",
      formula: "=SUM(Table[Could be lb])",
      format: ALWAYS.whole,
      note: "",
      caution: "green logs; an estimate",
    },
  ],
  columns: [
    ...LOG,
    { heading: "Rule", kind: "text", width: 18, note: "blank: International 1/4", list: "rules" },
    {
      heading: "Gross",
      kind: "computed",
      formula: "=BOLE.LOGSCALE([@[Small end]], [@Length], [@Rule])",
      format: FORMAT.whole,
      width: 9,
      note: "board feet",
    },
    { heading: "Off", kind: "text", width: 9, note: "defects: feet or 12%" },
    {
      heading: "Net",
      kind: "computed",
      formula: "=BOLE.NETSCALE([@Gross], [@Off])",
      format: FORMAT.whole,
      width: 9,
      note: "board feet",
    },
    {
      heading: "Cubic feet",
      kind: "computed",
      formula: `=BOLE.SMALIAN(${SIZES})`,
      format: FORMAT.one,
      width: 9,
      note: "Smalian",
    },
    ...WEIGHT,
    {
      heading: "To spare",
      kind: "computed",
      formula: `=IF([@[Small end]]="", "", BOLE.THROATFIT({Mill opening}, ${SIZES}))`,
      format: ALWAYS.one,
      width: 11,
      note: "",
      caution: "inches; minus: it will not pass",
    },
  ],
  examples: [
    {
      Log: "Example, invented",
      Species: "red maple",
      "Small end": "20",
      "Large end": "23 1/2",
      Length: "8-6",
      Rule: "Doyle",
      Off: "10%",
    },
  ],
  blankRows: 19,
};
