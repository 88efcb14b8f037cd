import type { Column, Figure, TableSheet } from "../definition";
import { FILLED, FORMAT } from "../formats";
import { GREEN_WEIGHT, HEAVIEST_SLAB, slabFeet } from "./board-columns";

const WIDTHS = ["W1", "W2", "W3", "W4", "W5"];
const SPOKEN_WIDTHS = WIDTHS.map((heading) => `IF([@${heading}]="", "", " / "&[@${heading}])`).join("&");

/** What is written on the slab: its widths begin after the first stroke. */
const TICKET =
  `[@Slab]&": "&[@Species]&" "&[@Thickness]&", "&[@Length]&" ft, widths "&MID(${SPOKEN_WIDTHS}, 4, 99)&" in, "` +
  `&TEXT([@[Board feet]], "0.00")&" bf ("&{Measured by}&"), "&IF([@Asking]=0, "price: ask", TEXT([@Asking], "0.00"))`;

const COLUMNS: readonly Column[] = [
  { heading: "Slab", kind: "text", width: 18, note: "number or tag" },
  { heading: "Species", kind: "text", width: 17, note: "choose or type", list: "species" },
  { heading: "Thickness", kind: "text", width: 11, note: "under 1 in counts as 1 in", list: "thicknesses" },
  ...WIDTHS.map((heading): Column => ({ heading, kind: "text", width: 7, note: "inches" })),
  { heading: "Length", kind: "text", width: 9, note: "feet; 8-6 is 8 ft 6 in" },
  {
    heading: "Board feet",
    formula: slabFeet("[@[W1]:[W5]]", "{Measured by}"),
    format: FILLED.two,
    width: 9,
    note: "as measured above",
  },
  { heading: "Green lb", formula: GREEN_WEIGHT, format: FILLED.whole, width: 9, caution: "an estimate: lift for more" },
  { heading: "Price", kind: "number", format: FORMAT.money, width: 9, note: "a board foot" },
  {
    heading: "Asking",
    formula: '=IF([@Price]="", 0, BOLE.LINEAMOUNT([@[Board feet]], [@Price]))',
    format: FILLED.money,
    width: 11,
    note: "for the slab",
  },
  { heading: "Stands", kind: "text", width: 16, note: "shed, rack, kiln" },
  { heading: "State", kind: "text", width: 17, note: "or sold: then it counts no more", list: "states" },
  {
    heading: "Ticket",
    formula: `=IF([@Slab]="", "", ${TICKET})`,
    width: 62,
    note: "to write on the slab",
    look: "wrapped",
  },
];

const unsold = (column: string) => `=SUM(Table[${column}])-SUMIFS(Table[${column}], Table[State], "sold")`;

const FIGURES: readonly Figure[] = [
  {
    label: "Slabs",
    formula: '=COUNTA(Table[Slab])-COUNTIF(Table[State], "sold")',
    format: FORMAT.whole,
    note: "not sold yet",
  },
  { label: "Board feet", formula: unsold("Board feet"), format: FORMAT.two, note: "in them" },
  { label: "Asked for all", formula: unsold("Asking"), format: FORMAT.money, note: "before tax" },
  HEAVIEST_SLAB,
];

/** Live-edge slabs: what each holds, where it stands, what is asked for it, and the words of its ticket. */
export const SLAB_STOCK: TableSheet = {
  title: "Slab stock",
  table: "SlabStock",
  lead: "Live-edge slabs for sale, with a ticket for each: read the width of the narrow face at equal steps and type widths, thickness and length first, then where the slab stands and its price a foot.",
  cautions: [
    "a slab on edge falls over and breaks bones: chain it to a rack or lay it flat, and lift it with enough people or a machine (common practice, no source).",
    "nobody has set how a live-edge slab is measured, and the customs differ. Say on ticket and bill which one you use, and keep to it.",
  ],
  settings: [
    {
      label: "Measured by",
      kind: "text",
      value: "mean",
      note: "mean, middle, narrow, third (from the narrow end) or simpson",
    },
  ],
  figures: FIGURES,
  frozenColumns: 1,
  columns: COLUMNS,
  examples: [
    {
      Slab: "S1, invented",
      Species: "black walnut",
      Thickness: "10/4",
      W1: "27",
      W2: "24 1/2",
      W3: "23",
      W4: "26",
      W5: "31",
      Length: "8-6",
      Price: 14,
      Stands: "shed, left",
      State: "air-dried",
    },
    {
      Slab: "S2, invented",
      Species: "white oak",
      Thickness: "8/4",
      W1: "30",
      W2: "28",
      W3: "33",
      Length: "10",
      Stands: "stack 2",
      State: "green",
    },
  ],
  blankRows: 13,
  print: { newPageAt: ["Stands"] },
};
