import type { Draft } from "../../draft";
import { drawFacts } from "../../drawing/facts";
import { caution, markOver, startPage } from "../../drawing/page";
import { drawStatus } from "../../drawing/status";
import { FORMAT } from "../../drawing/style";
import { type Column, drawMainTable } from "../../drawing/table";
import { yardRows } from "../../yard/read";

const vehicle = (column: string) => `XLOOKUP([@Vehicle], Vehicles[Vehicle], Vehicles[${column}])`;

const LOAD_COLUMNS: readonly Column[] = [
  { header: "Load", from: "load" },
  { header: "Vehicle", from: "vehicle", list: "Vehicle_list" },
  { header: "Logs", formula: "=COUNTIFS(Logs[Load], [@Load])" },
  { header: "Weight lb", formula: "=SUMIFS(Logs[Weight lb], Logs[Load], [@Load])", format: FORMAT.whole },
  { header: "Could be lb", formula: "=SUMIFS(Logs[Could be lb], Logs[Load], [@Load])", format: FORMAT.whole },
  {
    header: "Payload left",
    formula: `=BOLE.LOADLEFT(${vehicle("Rating lb")}, ${vehicle("Empty lb")}, [@[Weight lb]])`,
    format: FORMAT.whole,
  },
  {
    header: "Left at worst",
    formula: `=BOLE.LOADLEFT(${vehicle("Rating lb")}, ${vehicle("Empty lb")}, [@[Could be lb]])`,
    format: FORMAT.whole,
  },
  { header: "Heaviest lb", formula: "=MAXIFS(Logs[Weight lb], Logs[Load], [@Load])", format: FORMAT.whole },
  {
    header: "Verdict",
    formula: `=IF([@[Payload left]]<0, "OVER: do not pull", IF([@[Left at worst]]<0, "could be OVER: weigh first", "under on paper: weigh"))`,
  },
  { header: "Longest log", from: "longest", format: FORMAT.text },
  { header: "Tie-downs", formula: `=BOLE.TIEDOWNS([@[Could be lb]], [@[Longest log]], ${vehicle("Strap limit lb")})` },
  { header: "Miles", from: "miles" },
  { header: "Hours", from: "hours" },
  { header: "Board feet", formula: "=SUMIFS(Logs[Net], Logs[Load], [@Load])", format: FORMAT.whole },
  {
    header: "Haul per bf",
    formula: `=BOLE.HAULCOST([@Miles], ${vehicle("Per mile")}, [@Hours], ${vehicle("Per hour")}, [@[Board feet]])`,
    format: FORMAT.three,
  },
];

const LOADS_HEADER = 8;

/** What each trip carries, what is left of the rating, and how it is tied down. */
export function drawLoads(draft: Draft): void {
  const page = startPage(draft, "Loads", {
    title: "Loads: is each trip under the rating, and how is it tied down",
    lead: "A load takes its logs from the log book: give each log its load there. Weights and payload in pounds, haul in dollars. Left at worst counts every green log at the customary 15 % over the estimate.",
    widths: [9, 19, 8, 12, 12, 13, 13, 12, 27, 12, 11, 8, 8, 11, 12],
  });
  caution(
    page,
    3,
    "these are estimates. Green weight varies with species, season and sapwood: weigh the load before you pull it, and stay under the plates of trailer, axles, tires and hitch.",
  );
  caution(
    page,
    4,
    "the count of tie-downs is the least the federal rule asks; logs standing in stakes have a rule of their own. Straps below their marked limit, protected at edges, checked on the way.",
  );
  drawStatus(page, "I1");
  drawFacts(page, { label: "A", value: "D", says: "E" }, 5, [
    {
      label: "Least payload left at worst, lb",
      formula: "=MIN(Loads[Left at worst])",
      format: FORMAT.whole,
      key: true,
      name: "Key_least_payload",
    },
  ]);
  const last = drawMainTable(page, LOADS_HEADER, "Loads", LOAD_COLUMNS, yardRows("loads"));
  markOver(page, "I", LOADS_HEADER + 1, last + 200);
}
