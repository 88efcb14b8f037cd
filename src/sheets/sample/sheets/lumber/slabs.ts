import type { Draft } from "../../draft";
import { figure } from "../../drawing/cells";
import { drawFacts } from "../../drawing/facts";
import { put, startPage, setHeight } from "../../drawing/page";
import { drawStatus } from "../../drawing/status";
import { FORMAT, HEADER } from "../../drawing/style";
import { type Column, drawMainTable } from "../../drawing/table";
import { yardRows } from "../../yard/read";

const METHODS = ["mean", "middle", "narrow", "third", "simpson"];
const METHOD_COLUMNS = ["N", "O", "P", "Q", "R"];
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
  { header: "Product", formula: '=[@Species]&" "&[@Thickness]&" slab"' },
  { header: "Invoice", formula: '=XLOOKUP([@Piece], Lines[Piece], Lines[Invoice], "in stock")' },
  ...METHODS.map((method) => ({ header: `By ${method}`, formula: byMethod(`"${method}"`), format: FORMAT.two })),
];

/** Live-edge slabs by the custom chosen, with the other customs beside it. */
export function drawSlabs(draft: Draft): void {
  const page = startPage(draft, "Slabs", {
    title: "Slabs: what came out live-edged",
    lead: "Widths of the narrow face in inches, at equal steps along the slab. No authority says how a live-edge slab is measured, and the customs differ, as the last columns show: choose one, print it on the ticket and the bill, and keep to it.",
    widths: [9, 8, 20, 11, 8, 8, 8, 10, 11, 10, 14, 25, 10, 11, 11, 11, 11, 12],
  });
  drawStatus(page, "H1");
  drawFacts(page, { label: "A", value: "D", says: "E" }, 4, [
    {
      label: "Our way of measuring a slab",
      value: "mean",
      name: "Slab_method",
      list: "Method_list",
      says: "mean, middle, narrow, third (from the narrow end) or simpson",
    },
    {
      label: "All slabs, board feet our way",
      formula: "=SUM(Slabs[Board feet])",
      format: FORMAT.whole,
      key: true,
      name: "Key_slab_feet",
    },
    {
      label: "Share the choice of way moves",
      formula: "=MAX(N7:R7)/MIN(N7:R7)-1",
      format: FORMAT.share,
      key: true,
      name: "Key_slab_custom",
    },
    {
      label: "Heaviest slab, lb",
      formula: "=MAX(Slabs[Green lb])",
      format: FORMAT.whole,
      says: "get help or a machine: this is the weight off the saw",
    },
  ]);
  setHeight(page, 6, 31);
  METHODS.forEach((method, i) => {
    put(page, `${METHOD_COLUMNS[i]}6`, `all by ${method}`, HEADER);
    figure(page, `${METHOD_COLUMNS[i]}7`, `=SUM(Slabs[By ${method}])`, { format: FORMAT.whole });
  });
  drawMainTable(page, 10, "Slabs", COLUMNS, yardRows("slabs", ["thickness"]));
}
