import type { Draft } from "../../draft";
import { drawFacts } from "../../drawing/facts";
import type { Line } from "../../drawing/figures";
import { caution, markOver, startPage } from "../../drawing/page";
import { drawStatus } from "../../drawing/status";
import { FORMAT } from "../../drawing/style";
import { type Column, drawMainTable } from "../../drawing/table";
import { yardRows } from "../../yard/read";

const COLUMNS: readonly Column[] = [
  { header: "Log", from: "log" },
  { header: "Date", from: "date_in", format: FORMAT.date },
  { header: "Species", from: "species", list: "Species_list" },
  { header: "Came from", from: "source" },
  { header: "Small 1", from: "small_a" },
  { header: "Small 2", from: "small_b" },
  { header: "Large 1", from: "large_a" },
  { header: "Large 2", from: "large_b" },
  { header: "Length", from: "length", format: FORMAT.text },
  { header: "Sweep", from: "sweep" },
  { header: "Defect", from: "defect", format: "0%" },
  { header: "Load", from: "load" },
  { header: "Paid", from: "paid", format: FORMAT.moneyWhole },
  { header: "Dia", formula: "=BOLE.SCALEDIAMETER([@[Small 1]:[Small 2]], Dia_rounding)", format: FORMAT.two },
  { header: "Butt", formula: "=BOLE.SCALEDIAMETER([@[Large 1]:[Large 2]])", format: FORMAT.two },
  { header: "Scaled ft", formula: "=BOLE.SCALELENGTH([@Length], Trim_allowance)", format: FORMAT.whole },
  { header: "Board feet", formula: "=BOLE.LOGSCALE([@Dia], [@[Scaled ft]], Rule)", format: FORMAT.whole },
  { header: "Net", formula: "=BOLE.NETSCALE([@[Board feet]], [@Defect])", format: FORMAT.whole },
  { header: "Cubic ft", formula: "=BOLE.SMALIAN([@Dia], [@Butt], [@Length])", format: FORMAT.one },
  {
    header: "Weight lb",
    formula: '=BOLE.LOGWEIGHT([@Species], [@Dia], [@Butt], [@Length], , "with")',
    format: FORMAT.whole,
  },
  {
    header: "Could be lb",
    formula: '=BOLE.LOGWEIGHT([@Species], [@Dia], [@Butt], [@Length], , "with", "high")',
    format: FORMAT.whole,
  },
  {
    header: "Room inches",
    formula:
      "=BOLE.THROATFIT(Mill_opening, MAX([@[Small 1]:[Small 2]]), MAX([@[Large 1]:[Large 2]]), [@Length], [@Sweep], Opening_clearance)",
    format: FORMAT.one,
  },
  {
    header: "Verdict",
    formula:
      '=IF([@[Room inches]]<0, "OVER the opening", IF([@[Could be lb]]>Loader_limit, "OVER the loader", "fits"))',
  },
  { header: "Note", from: "note" },
];

const WIDTHS = [7, 11, 20, 18, 8, 8, 8, 8, 9, 8, 8, 7, 8, 13, 13, 12, 9, 9, 9, 11, 11, 11, 18, 34];
const HEADER_ROW = 10;

/** The log book: what came in, what it scales, what it weighs, and whether the mill takes it. */
export function drawLogBook(draft: Draft): void {
  const page = startPage(draft, "Log book", {
    title: "Log book: what is in each log, and does the mill take it",
    lead: "One row a log. Diameters in inches inside bark, read two ways across each end. Lengths as on the tape: 10'6\", 8-6 or 3.2 m. Sweep and room to spare in inches. Defect is the share of the scale taken off. The small grey words name the function behind each column.",
    widths: WIDTHS,
  });
  drawStatus(page, "J1");
  drawFacts(page, { label: "A", value: "D", says: "E" }, 4, SETTINGS);
  drawFacts(page, { label: "N", value: "Q", says: "R" }, 4, TOTALS);
  caution(
    page,
    3,
    "city trees hide metal: scan every face after every cut. A weight is an estimate: weigh before you lift or pull. Ash, oak, walnut and elm with bark on may fall under a quarantine: ask your state before a log crosses a county line.",
  );
  const last = drawMainTable(page, HEADER_ROW, "Logs", COLUMNS, yardRows("logs"));
  markOver(page, "W", HEADER_ROW + 1, last + 200);
}

const SETTINGS: readonly Line[] = [
  {
    label: "Log rule to scale by",
    value: "International 1/4",
    name: "Rule",
    list: "Rule_list",
    says: "any rule of the Lists sheet",
  },
  {
    label: "Trim left on every log, inches",
    value: 3,
    name: "Trim_allowance",
    says: "the rest counts down to whole feet",
  },
  {
    label: "Rounding of the diameter",
    value: "none",
    name: "Dia_rounding",
    list: "Rounding_list",
    says: "none, nearest or down: local custom decides",
  },
  {
    label: "Most the loader lifts at its reach, lb",
    value: 4000,
    name: "Loader_limit",
    says: "invented; take yours from the maker's chart",
  },
];

const TOTALS: readonly Line[] = [
  { label: "Logs", formula: "=COUNTA(Logs[Log])", name: "Key_logs" },
  { label: "Net board feet", formula: "=SUM(Logs[Net])", name: "Key_net_board_feet" },
  { label: "Heaviest log, lb", formula: "=MAX(Logs[Weight lb])", name: "Key_heaviest_log" },
  { label: "Logs the mill refuses", formula: '=COUNTIF(Logs[Room inches], "<0")', name: "Key_logs_over_opening" },
].map((total) => ({ ...total, format: FORMAT.whole, key: true }));
