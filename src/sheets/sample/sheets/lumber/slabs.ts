import type { Column, TableSheet } from "../../../definition";
import { GREEN_WEIGHT, HEAVIEST_SLAB, slabFeet } from "../../../definitions/board-columns";
import { FORMAT } from "../../../formats";
import type { Draft } from "../../draft";
import { drawTableSheet } from "../../drawing/table-sheet";
import { lookUp } from "../../look-up";
import { yardRows } from "../../yard/read";

const METHODS = ["mean", "middle", "narrow", "third", "simpson"];
const BY_METHOD = METHODS.map((method) => `{All by ${method}}`).join(", ");
const byMethod = (method: string) => slabFeet("[@[W1]:[W3]]", method);

const COLUMNS: readonly Column[] = [
  { heading: "Piece", width: 8 },
  { heading: "Log", width: 8 },
  { heading: "Species", width: 20, list: "species" },
  { heading: "Thickness", width: 11, format: FORMAT.text, list: "thicknesses" },
  { heading: "W1", width: 8 },
  { heading: "W2", width: 8 },
  { heading: "W3", width: 8 },
  { heading: "Length", width: 10, format: FORMAT.text },
  { heading: "Board feet", width: 10, formula: byMethod("Slab_method"), format: FORMAT.two },
  { heading: "Face ft2", width: 10, formula: "=BOLE.SLABAREA([@[W1]:[W3]], [@Length])", format: FORMAT.two },
  { heading: "Green lb", width: 10, formula: GREEN_WEIGHT, format: FORMAT.whole },
  { heading: "Product", width: 25, formula: '=[@Species]&" "&[@Thickness]&" slab"' },
  {
    heading: "Invoice",
    width: 10,
    formula: `=IFERROR(${lookUp("[@Piece]", "Lines[Piece]", "Lines[Invoice]")}, "in stock")`,
  },
  ...METHODS.map((method) => ({
    heading: `By ${method}`,
    width: 10,
    formula: byMethod(`"${method}"`),
    format: FORMAT.two,
  })),
];

const SLABS: TableSheet = {
  title: "Slabs",
  heading: "Slabs: what came out live-edged",
  table: "Slabs",
  lead: "Widths of the narrow face in inches, at equal steps along the slab. No authority says how a live-edge slab is measured, and the customs differ, as the last columns show: choose one, print it on the ticket and the bill, and keep to it.",
  cautions: [],
  settings: [
    {
      label: "Our way of measuring a slab",
      kind: "text",
      value: "mean",
      name: "Slab_method",
      list: "Method_list",
      note: "mean, middle, narrow, third (from the narrow end) or simpson",
    },
  ],
  figures: [
    {
      label: "All slabs, our way",
      formula: "=SUM(Table[Board feet])",
      format: FORMAT.whole,
      note: "board feet",
      name: "Key_slab_feet",
    },
    ...METHODS.map((method) => ({
      label: `All by ${method}`,
      formula: `=SUM(Table[By ${method}])`,
      format: FORMAT.whole,
      note: "board feet",
    })),
    {
      label: "Share the choice of way moves",
      formula: `=MAX(${BY_METHOD})/MIN(${BY_METHOD})-1`,
      format: FORMAT.share,
      note: "",
      name: "Key_slab_custom",
    },
    HEAVIEST_SLAB,
  ],
  valueColumn: 4,
  figuresFrom: { label: 9, value: 12 },
  frozenColumns: 1,
  columns: COLUMNS,
  examples: yardRows("slabs", ["Thickness"]),
  blankRows: 0,
  print: { newPageAt: ["Green lb"] },
};

/** Live-edge slabs by the custom chosen, with the other customs beside it. */
export function drawSlabs(draft: Draft): void {
  drawTableSheet(draft, SLABS);
}
