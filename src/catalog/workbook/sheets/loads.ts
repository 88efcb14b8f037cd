import type { Draft } from "../draft";
import { caution, figure, freeze, heading, markOver, put, repeatRows, startPage } from "../page";
import { FORMAT, TEXT } from "../style";
import { type Column, drawTable, type Row } from "../table";
import { yardRows } from "../yard/read";

/** Ratings and empty weights are invented; the plate on the trailer and a scale ticket give the real ones. */
const VEHICLES: readonly Row[] = [
  {
    Vehicle: "Own trailer",
    "Rating lb": 14000,
    "Empty lb": 3600,
    "Strap limit lb": 3333,
    "Per mile": 1.1,
    "Per hour": 40,
  },
  {
    Vehicle: "Hired crane truck",
    "Rating lb": 46000,
    "Empty lb": 24500,
    "Strap limit lb": 5000,
    "Per mile": 0,
    "Per hour": 170,
  },
];

const VEHICLE_COLUMNS: readonly Column[] = [
  { header: "Vehicle" },
  { header: "Rating lb", format: FORMAT.whole },
  { header: "Empty lb", format: FORMAT.whole },
  { header: "Strap limit lb", format: FORMAT.whole },
  { header: "Per mile", format: FORMAT.money },
  { header: "Per hour", format: FORMAT.money },
];

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
  { header: "Cargo length", from: "cargo", format: FORMAT.text },
  { header: "Tie-downs", formula: `=BOLE.TIEDOWNS([@[Weight lb]], [@[Cargo length]], ${vehicle("Strap limit lb")})` },
  { header: "Miles", from: "miles" },
  { header: "Hours", from: "hours" },
  { header: "Board feet", formula: "=SUMIFS(Logs[Net], Logs[Load], [@Load])", format: FORMAT.whole },
  {
    header: "Haul per bf",
    formula: `=BOLE.HAULCOST([@Miles], ${vehicle("Per mile")}, [@Hours], ${vehicle("Per hour")}, [@[Board feet]])`,
    format: FORMAT.three,
  },
];

const LOADS_HEADER = 14;

/** What each trip carries, what is left of the rating, and how it is tied down. */
export function drawLoads(draft: Draft): void {
  const page = startPage(draft, "Loads", {
    title: "Loads",
    lead: "A load takes its logs from the log book: give each log its load there. Left at worst counts every green log at the customary 15 % over the estimate.",
    widths: [18, 19, 11, 14, 12, 13, 13, 12, 27, 12, 10, 8, 8, 10, 11],
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
  heading(page, 6, "Vehicles (invented ratings: take yours from the plate and a scale ticket)");
  drawTable(page, "A8", "Vehicles", VEHICLE_COLUMNS, VEHICLES);
  page.draft.book.definedNames.add("'Loads'!$A$9:$A$10", "Vehicle_list");
  put(page, "I9", "Least payload left on a trip, lb", TEXT);
  figure(page, "K9", "=MIN(Loads[Payload left])", { format: FORMAT.whole, key: true, name: "Key_least_payload" });
  heading(page, 12, "Trips");
  freeze(page, LOADS_HEADER, 1);
  repeatRows(page, LOADS_HEADER, LOADS_HEADER);
  const loads = yardRows("loads").map((row) => ({ ...row, cargo: "10'6\"" }));
  const last = drawTable(page, `A${LOADS_HEADER}`, "Loads", LOAD_COLUMNS, loads);
  markOver(page, "I", LOADS_HEADER + 1, last + 200);
}
