import type { Column, Figure, TableSheet } from "../definition";
import { FILLED, FORMAT } from "../formats";
import { tieDowns, VEHICLE, WEIGH_FIRST } from "./hauling";
import { LOG, WEIGHT } from "./log-columns";

/** The sum of a column over all logs that go on this log's trip. */
const ofTrip = (column: string) => `SUMIFS(Table[${column}], Table[Trip], [@Trip])`;
const inTrip = (shown: string, none: string) => `=IF([@Trip]="", ${none}, ${shown})`;

const FIGURES: readonly Figure[] = [
  {
    label: "One tie-down holds",
    formula: `=IF({Limit on its tag}="", BOLE.TIEDOWNLIMIT({Gear}, {Size}, {Grade}), {Limit on its tag})`,
    format: FORMAT.whole,
    note: "",
    caution: "pounds by its tag, or by the federal table; hook, binder and anchor may hold less",
  },
  {
    label: "Payload",
    formula: "=BOLE.LOADLEFT({Rating on the plate}, {Empty weight})",
    format: FORMAT.whole,
    note: "pounds that one trip may carry",
  },
  {
    label: "Left at worst",
    formula: "=MIN({Payload}, Table[Left on trip])",
    format: FORMAT.whole,
    note: "",
    caution: "pounds, on the fullest trip, if every log is as heavy as it may be; below 0: take one off",
  },
  {
    label: "Tie-downs to take",
    formula: "=MAX(Table[Trip ties])",
    format: FORMAT.whole,
    note: "for the trip that needs the most",
  },
  {
    label: "Not on a trip",
    formula: `=COUNTIF(Table[Could be lb], ">0")-COUNT(Table[Left on trip])`,
    format: FORMAT.whole,
    note: "logs without a number in the column Trip",
  },
];

const BY_TRIP: readonly Column[] = [
  { heading: "Trip", kind: "number", width: 7, note: "1, 2, 3" },
  ...WEIGHT,
  tieDowns("{One tie-down holds}"),
  {
    heading: "Trip lb",
    formula: inTrip(ofTrip("Could be lb"), "0"),
    format: FILLED.whole,
    width: 10,
    note: "at worst, all its logs",
  },
  {
    heading: "Trip ties",
    formula: inTrip(ofTrip("Tie-downs"), "0"),
    format: FILLED.whole,
    width: 9,
    note: "all its logs",
  },
  {
    heading: "Left on trip",
    formula: inTrip("BOLE.LOADLEFT({Rating on the plate}, {Empty weight}, [@[Trip lb]])", '""'),
    format: FORMAT.whole,
    width: 10,
    note: "pounds at worst",
  },
  {
    heading: "Verdict",
    formula: `=IF([@[Left on trip]]="", "", IF([@[Left on trip]]<0, "OVER: take one off", "under on paper: weigh"))`,
    width: 20,
    note: "",
    caution: "a scale decides",
    marksOver: true,
  },
];

/** Several trips: which log goes on which, what each trip weighs at worst, and the tie-downs it takes. */
export const TRIPS: TableSheet = {
  title: "Trips and tie-downs",
  table: "Trips",
  lead: "Hauling a yard of logs in several trips: type rating, empty weight and straps or chains first, then a row for each log with its trip. Is a trip overloaded, and how many tie-downs go along? The fewest trips stand at the right.",
  cautions: [WEIGH_FIRST],
  settings: [
    ...VEHICLE,
    { label: "Gear", kind: "text", value: "chain", note: "strap, chain, or as on its page" },
    { label: "Size", kind: "text", value: "3/8", note: "inches: of the chain, or width of the strap (invented)" },
    { label: "Grade", kind: "number", value: 70, note: "marked on a chain; blank where there is none (invented)" },
    { label: "Limit on its tag", kind: "number", value: "", note: "pounds: it rules over size and grade" },
    { label: "Cost of a trip", kind: "number", value: "", note: "money; may be blank" },
    { label: "Cost of hiring", kind: "number", value: "", note: "one hired truck for all of them; may be blank" },
  ],
  figures: FIGURES,
  columns: [{ ...LOG[0]!, width: 18 }, ...LOG.slice(1), ...BY_TRIP],
  examples: [
    {
      Log: "A1, invented",
      Species: "red maple",
      "Small end": "20",
      "Large end": "23 1/2",
      Length: "8-6",
      Trip: 1,
    },
    { Log: "A2, invented", Species: "black walnut", "Small end": "26", "Large end": "30", Length: "10", Trip: 1 },
    { Log: "A3, invented", Species: "white oak", "Small end": "34", "Large end": "38", Length: "12", Trip: 2 },
  ],
  blankRows: 12,
  beside: {
    heading: "The fewest trips, at worst; the logs are counted down the table",
    formula: `=IF(SUM(Table[Could be lb])=0, "no logs yet", BOLE.TRIPPLAN(Table[Could be lb], {Payload}, {Cost of a trip}, {Cost of hiring}))`,
    rows: 14,
    columns: [{ width: 36 }, { width: 22 }, { width: 11, format: FORMAT.whole }, { width: 12, format: FORMAT.whole }],
  },
};
