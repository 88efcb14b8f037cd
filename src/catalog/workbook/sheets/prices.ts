import type { Draft } from "../draft";
import { entry } from "../cells";
import { caution, freeze, put, repeatRows, startPage } from "../page";
import { FORMAT, SMALL, TEXT } from "../style";
import { type Column, drawTable } from "../table";
import { yardRows } from "../yard/read";

const COLUMNS: readonly Column[] = [
  { header: "Species", from: "species", list: "Species_list" },
  { header: "Thickness", from: "thickness", format: FORMAT.text, list: "Thickness_list" },
  { header: "Kind", from: "kind" },
  { header: "State", from: "state" },
  { header: "Inches", formula: "=BOLE.QUARTERS([@Thickness])", format: FORMAT.three },
  { header: "Cost per bf", from: "cost", format: FORMAT.money },
  { header: "Price for margin", formula: "=BOLE.LISTPRICE([@[Cost per bf]], Margin_wanted)", format: FORMAT.money },
  { header: "Price asked", from: "price", format: FORMAT.money },
  { header: "Margin got", formula: "=BOLE.MARGIN([@[Price asked]], [@[Cost per bf]])", format: FORMAT.share },
  { header: "10 ft of 10 in", formula: "=BOLE.BOARDFEET([@Thickness], 10, 10)*[@[Price asked]]", format: FORMAT.money },
];
const HEADER_ROW = 8;

/** The price list by species, thickness and state, with the margin each price leaves. */
export function drawPrices(draft: Draft): void {
  const page = startPage(draft, "Prices", {
    title: "Prices: what to ask",
    lead: "A margin is a share of the price, not of the cost: 40 % on top of the cost leaves a margin of 28.6 %. Costs are invented: those of Log results with waste, drying and selling on top.",
    widths: [22, 11, 11, 20, 9, 12, 13, 12, 11, 14],
  });
  caution(
    page,
    3,
    "nothing here is graded for structural use. A joist, post, stair or guard needs what the local code asks for.",
  );
  put(page, "A5", "Margin wanted", TEXT);
  entry(page, "B5", "45%", { name: "Margin_wanted", format: FORMAT.text });
  put(page, "C5", "a share of the price", SMALL);
  freeze(page, HEADER_ROW, 1);
  repeatRows(page, HEADER_ROW, HEADER_ROW);
  drawTable(page, `A${HEADER_ROW}`, "Prices", COLUMNS, yardRows("prices", ["thickness"]));
}
