import type { Column, Row, TableSheet } from "../../../definition";
import { DOLLARS, FORMAT } from "../../../formats";
import type { Draft } from "../../draft";
import { drawTableSheet } from "../../drawing/table-sheet";

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
    "Per mile": 2.5,
    "Per hour": 152.5,
  },
];

const COLUMNS: readonly Column[] = [
  { heading: "Vehicle", width: 26 },
  { heading: "Rating lb", width: 14, format: FORMAT.whole },
  { heading: "Empty lb", width: 14, format: FORMAT.whole },
  { heading: "Strap limit lb", width: 16, format: FORMAT.whole },
  { heading: "Per mile", width: 13, format: DOLLARS.cents },
  { heading: "Per hour", width: 13, format: DOLLARS.cents },
];
/** The list to choose from has room for vehicles to come. */
const ROWS_TO_COME = 10;

const FLEET: TableSheet = {
  title: "Vehicles",
  heading: "Vehicles: what each may weigh, and what it costs",
  table: "Vehicles",
  lead: "Rating and empty weight of each, the limit of one of its straps or chains, and what it costs.",
  cautions: [
    "all figures are invented. Take the rating from the plate and the empty weight from a scale ticket; the lowest plate of trailer, axles, tires, hitch and truck rules.",
  ],
  settings: [],
  figures: [],
  frozenColumns: 0,
  columns: COLUMNS,
  examples: VEHICLES,
  blankRows: 0,
  print: { upright: true },
};

/** What each vehicle may weigh, weighs empty, and costs. */
export function drawVehicles(draft: Draft): void {
  const { table } = drawTableSheet(draft, FLEET);
  const vehicles = `$A$${table.headerRow + 1}:$A$${table.lastRow + ROWS_TO_COME}`;
  draft.book.names.push({ name: "Vehicle_list", refersTo: `'Vehicles'!${vehicles}` });
}
