import type { Draft } from "../../draft";
import { caution, startPage } from "../../drawing/page";
import { FORMAT } from "../../drawing/style";
import { type Column, drawMainTable, type Row } from "../../drawing/table";

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
  { header: "Vehicle" },
  { header: "Rating lb", format: FORMAT.whole },
  { header: "Empty lb", format: FORMAT.whole },
  { header: "Strap limit lb", format: FORMAT.whole },
  { header: "Per mile", format: FORMAT.money },
  { header: "Per hour", format: FORMAT.money },
];
const HEADER_ROW = 6;

/** What each vehicle may weigh, weighs empty, and costs. */
export function drawVehicles(draft: Draft): void {
  const page = startPage(draft, "Vehicles", {
    title: "Vehicles: what each may weigh, and what it costs",
    lead: "Rating and empty weight of each, the limit of one of its straps or chains, and what it costs.",
    widths: [26, 14, 14, 16, 13, 13],
    landscape: false,
  });
  caution(
    page,
    3,
    "all figures are invented. Take the rating from the plate and the empty weight from a scale ticket; the lowest plate of trailer, axles, tires, hitch and truck rules.",
    2,
  );
  const last = drawMainTable(page, HEADER_ROW, "Vehicles", COLUMNS, VEHICLES, 0);
  draft.book.names.push({ name: "Vehicle_list", refersTo: `'Vehicles'!$A$${HEADER_ROW + 1}:$A$${last + 10}` });
}
