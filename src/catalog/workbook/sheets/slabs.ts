import type { Draft } from "../draft";
import { entry, figure } from "../cells";
import { freeze, put, repeatRows, startPage } from "../page";
import { FORMAT, HEADER, SMALL, TEXT } from "../style";
import { type Column, drawTable } from "../table";
import { yardRows } from "../yard/read";

const METHODS = ["mean", "middle", "narrow", "third", "simpson"];
const byMethod = (method: string) => `=BOLE.SLABFEET([@Thickness], [@[W1]:[W3]], [@Length], ${method})`;

const COLUMNS: readonly Column[] = [
  { header: "Piece", from: "piece" },
  { header: "Log", from: "log" },
  { header: "Species", from: "species", list: "Species_list" },
  { header: "Thickness", from: "thickness", format: FORMAT.text, list: "Thickness_list" },
  { header: "W1", from: "w1" },
  { header: "W2", from: "w2" },
  { header: "W3", from: "w3" },
  { header: "Length", from: "length", format: FORMAT.text },
  { header: "Board feet", formula: byMethod("Slab_method"), format: FORMAT.two },
  { header: "Face ft2", formula: "=BOLE.SLABAREA([@[W1]:[W3]], [@Length])", format: FORMAT.two },
  { header: "Green lb", formula: "=BOLE.LUMBERWEIGHT([@Species], [@[Board feet]])", format: FORMAT.whole },
  ...METHODS.map((method) => ({ header: `By ${method}`, formula: byMethod(`"${method}"`), format: FORMAT.two })),
];
const HEADER_ROW = 10;
const METHOD_COLUMNS = ["L", "M", "N", "O", "P"];

/** Live-edge slabs by the custom chosen, with the other customs beside it. */
export function drawSlabs(draft: Draft): void {
  const page = startPage(draft, "Slabs", {
    title: "Slabs: what came out live-edged",
    lead: "Widths of the narrow face at equal steps along the slab. No authority says how a live-edge slab is measured and the customs differ by a fifth: choose one, print it on the bill, and keep to it.",
    widths: [9, 8, 20, 11, 8, 8, 8, 10, 11, 10, 14, 11, 11, 11, 11, 12],
  });
  put(page, "A4", "Our way of measuring a slab", TEXT);
  entry(page, "D4", "mean", { name: "Slab_method", list: "Method_list" });
  put(page, "E4", "mean, middle, narrow, third (from the narrow end) or simpson", SMALL);
  put(page, "A5", "All slabs, board feet our way", TEXT);
  figure(page, "D5", "=SUM(Slabs[Board feet])", { format: FORMAT.whole, key: true, name: "Key_slab_feet" });
  put(page, "A6", "Share the choice of way moves", TEXT);
  figure(page, "D6", "=MAX(L7:P7)/MIN(L7:P7)-1", { format: FORMAT.share, key: true, name: "Key_slab_custom" });
  put(page, "A7", "Heaviest slab, lb", TEXT);
  figure(page, "D7", "=MAX(Slabs[Green lb])", { format: FORMAT.whole });
  put(page, "E7", "get help or a machine: this is the weight off the saw", SMALL);
  page.sheet.getRow(6).height = 31;
  METHODS.forEach((method, i) => {
    put(page, `${METHOD_COLUMNS[i]}6`, `all by ${method}`, HEADER);
    figure(page, `${METHOD_COLUMNS[i]}7`, `=SUM(Slabs[By ${method}])`, { format: FORMAT.whole });
  });
  freeze(page, HEADER_ROW, 1);
  repeatRows(page, HEADER_ROW, HEADER_ROW);
  drawTable(page, `A${HEADER_ROW}`, "Slabs", COLUMNS, yardRows("slabs", ["thickness"]));
}
