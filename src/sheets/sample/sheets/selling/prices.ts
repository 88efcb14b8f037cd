import type { Draft } from "../../draft";
import { drawFacts } from "../../drawing/facts";
import { caution, put, startPage } from "../../drawing/page";
import { drawStatus } from "../../drawing/status";
import { FORMAT, SMALL } from "../../drawing/style";
import { type Column, drawMainTable, drawTable } from "../../drawing/table";
import { yardRows } from "../../yard/read";

const COLUMNS: readonly Column[] = [
  { header: "Species", from: "species", list: "Species_list" },
  { header: "Thickness", from: "thickness", format: FORMAT.text, list: "Thickness_list" },
  { header: "Kind", from: "kind" },
  { header: "State", from: "state", list: "State_list" },
  { header: "Inches", formula: "=BOLE.QUARTERS([@Thickness])", format: FORMAT.three },
  { header: "Cost per bf", from: "cost", format: FORMAT.money },
  { header: "Price for margin", formula: "=BOLE.LISTPRICE([@[Cost per bf]], Margin_wanted)", format: FORMAT.money },
  { header: "Price asked", from: "price", format: FORMAT.money },
  { header: "Margin got", formula: "=BOLE.MARGIN([@[Price asked]], [@[Cost per bf]])", format: FORMAT.share },
  { header: "10 ft of 10 in", formula: "=BOLE.BOARDFEET([@Thickness], 10, 10)*[@[Price asked]]", format: FORMAT.money },
  { header: "Sold as", formula: '=[@Species]&" "&[@Thickness]&" "&[@Kind]&", "&[@State]' },
];

const SERVICES: readonly Column[] = [
  { header: "Service", from: "service" },
  { header: "Per", from: "per" },
  { header: "Price", from: "price", format: FORMAT.money },
];
const HEADER_ROW = 8;

/** The price list by species, thickness and state, with the margin each price leaves, and the price of a service. */
export function drawPrices(draft: Draft): void {
  const page = startPage(draft, "Prices", {
    title: "Prices: what to ask",
    lead: "A margin is a share of the price, not of the cost: 40 % on top of the cost leaves a margin of 28.6 %. Costs are invented: those of Log results with waste, drying and selling on top. Every thing sawn has a price green, air-dried and kiln-dried; Sold as is what tickets and stock look up.",
    widths: [22, 11, 9, 19, 9, 12, 13, 12, 11, 14, 42, 3, 44, 11, 10],
  });
  drawStatus(page, "G1");
  caution(
    page,
    3,
    "nothing here is graded for structural use. A joist, post, stair or guard needs what the local code asks for.",
  );
  drawFacts(page, { label: "A", value: "B", says: "C" }, 5, [
    { label: "Margin wanted", value: "45%", name: "Margin_wanted", format: FORMAT.text, says: "a share of the price" },
  ]);
  drawMainTable(page, HEADER_ROW, "Prices", COLUMNS, yardRows("prices", ["thickness"]));
  put(page, `M${HEADER_ROW - 1}`, "Work by the piece or the hour", SMALL);
  drawTable(page, `M${HEADER_ROW}`, "Services", SERVICES, yardRows("services"));
}
