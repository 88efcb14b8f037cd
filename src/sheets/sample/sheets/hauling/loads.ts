import type { Column, TableSheet } from "../../../definition";
import { FORMAT } from "../../../formats";
import type { Draft } from "../../draft";
import { drawTableSheet } from "../../drawing/table-sheet";
import { lookUp } from "../../look-up";
import { yardRows } from "../../yard/read";

const vehicle = (column: string) => lookUp("[@Vehicle]", "Vehicles[Vehicle]", `Vehicles[${column}]`);

const LOAD_COLUMNS: readonly Column[] = [
  { heading: "Load", width: 8 },
  { heading: "Vehicle", width: 17, list: "Vehicle_list" },
  { heading: "Logs", width: 6, formula: "=COUNTIFS(Logs[Load], [@Load])" },
  { heading: "Weight lb", width: 10, formula: "=SUMIFS(Logs[Weight lb], Logs[Load], [@Load])", format: FORMAT.whole },
  {
    heading: "Could be lb",
    width: 11,
    formula: "=SUMIFS(Logs[Could be lb], Logs[Load], [@Load])",
    format: FORMAT.whole,
  },
  {
    heading: "Payload left",
    width: 10,
    formula: `=BOLE.LOADLEFT(${vehicle("Rating lb")}, ${vehicle("Empty lb")}, [@[Weight lb]])`,
    format: FORMAT.whole,
  },
  {
    heading: "Left at worst",
    width: 10,
    formula: `=BOLE.LOADLEFT(${vehicle("Rating lb")}, ${vehicle("Empty lb")}, [@[Could be lb]])`,
    format: FORMAT.whole,
  },
  { heading: "Heaviest lb", width: 11, formula: "=MAXIFS(Logs[Weight lb], Logs[Load], [@Load])", format: FORMAT.whole },
  {
    heading: "Verdict",
    marksOver: true,
    width: 24,
    formula: `=IF([@[Payload left]]<0, "OVER: do not pull", IF([@[Left at worst]]<0, "could be OVER: weigh first", "under on paper: weigh"))`,
  },
  { heading: "Longest log", width: 9, format: FORMAT.text },
  {
    heading: "Tie-downs",
    width: 9,
    formula: `=BOLE.TIEDOWNS([@[Could be lb]], [@[Longest log]], ${vehicle("Strap limit lb")})`,
  },
  { heading: "Miles", width: 7 },
  { heading: "Hours", width: 7 },
  { heading: "Board feet", width: 9, formula: "=SUMIFS(Logs[Net], Logs[Load], [@Load])", format: FORMAT.whole },
  {
    heading: "Haul per bf",
    width: 10,
    formula: `=BOLE.HAULCOST([@Miles], ${vehicle("Per mile")}, [@Hours], ${vehicle("Per hour")}, [@[Board feet]])`,
    format: FORMAT.three,
  },
];

const LOADS: TableSheet = {
  title: "Loads",
  heading: "Loads: is each trip under the rating, and how is it tied down",
  table: "Loads",
  lead: "A load takes its logs from the log book: give each log its load there. Weights and payload in pounds, haul in dollars. Left at worst counts every green log at the customary 15 % over the estimate.",
  cautions: [
    "these are estimates. Green weight varies with species, season and sapwood: weigh the load before you pull it, and stay under the plates of trailer, axles, tires and hitch.",
    "the count of tie-downs is the least the federal rule asks; logs standing in stakes have a rule of their own. Straps below their marked limit, protected at edges, checked on the way.",
  ],
  settings: [],
  figures: [
    {
      label: "Least payload left at worst, lb",
      formula: "=MIN(Table[Left at worst])",
      format: FORMAT.whole,
      note: "",
      name: "Key_least_payload",
    },
  ],
  valueColumn: 4,
  frozenColumns: 1,
  columns: LOAD_COLUMNS,
  examples: yardRows("loads"),
  blankRows: 0,
};

/** What each trip carries, what is left of the rating, and how it is tied down. */
export function drawLoads(draft: Draft): void {
  drawTableSheet(draft, LOADS);
}
