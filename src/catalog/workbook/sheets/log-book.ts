import type { Draft } from "../draft";
import { entry, figure } from "../cells";
import { caution, freeze, markOver, put, repeatRows, startPage } from "../page";
import { FORMAT, SMALL, TEXT } from "../style";
import { type Column, drawTable } from "../table";
import { yardRows } from "../yard/read";

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
    title: "Log book",
    lead: "One row a log. Diameters in inches inside bark, read two ways across each end. Lengths as on the tape: 10'6\", 8-6 or 3.2 m. Defect is the share of the scale taken off. The small grey words name the function behind each column.",
    widths: WIDTHS,
  });
  const setting = (row: number, label: string, value: string | number, name: string, more: string, list?: string) => {
    put(page, `A${row}`, label, TEXT);
    entry(page, `D${row}`, value, { name, list });
    put(page, `E${row}`, more, SMALL);
  };
  setting(4, "Log rule to scale by", "International 1/4", "Rule", "any rule of the Lists sheet", "Rule_list");
  setting(5, "Trim left on every log, inches", 3, "Trim_allowance", "the rest counts down to whole feet");
  setting(
    6,
    "Rounding of the diameter",
    "none",
    "Dia_rounding",
    "none, nearest or down: local custom decides",
    "Rounding_list",
  );
  setting(
    7,
    "Most the loader lifts at its reach, lb",
    4000,
    "Loader_limit",
    "invented; take yours from the maker's chart",
  );
  const total = (row: number, label: string, formula: string, name: string) => {
    put(page, `N${row}`, label, TEXT);
    figure(page, `Q${row}`, formula, { format: FORMAT.whole, key: true, name });
  };
  total(4, "Logs", "=COUNTA(Logs[Log])", "Key_logs");
  total(5, "Net board feet", "=SUM(Logs[Net])", "Key_net_board_feet");
  total(6, "Heaviest log, lb", "=MAX(Logs[Weight lb])", "Key_heaviest_log");
  total(7, "Logs the mill refuses", '=COUNTIF(Logs[Room inches], "<0")', "Key_logs_over_opening");
  caution(
    page,
    3,
    "city trees hide metal: scan every face after every cut. A weight is an estimate: weigh before you lift or pull. Ash, oak, walnut and elm with bark on may fall under a quarantine: ask your state before a log crosses a county line.",
  );
  freeze(page, HEADER_ROW, 1);
  repeatRows(page, HEADER_ROW, HEADER_ROW);
  const last = drawTable(page, `A${HEADER_ROW}`, "Logs", COLUMNS, yardRows("logs"));
  markOver(page, "W", HEADER_ROW + 1, last + 200);
}
