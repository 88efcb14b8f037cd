import type { Column, Figure, TableSheet } from "../definition";
import { FORMAT } from "../formats";
import { PARTNERS_AGREE } from "./cautions";

const SHARES =
  "BOLE.PARTNERSHARE({Came in}, {First laid out}:{Second laid out}, {Share of the first}:{Share of the second})";

const COLUMNS: readonly Column[] = [
  { heading: "Day", format: FORMAT.date, width: 20, note: "a date" },
  { heading: "What", kind: "text", width: 32, note: "logs, blades, fuel; a sale, before its tax" },
  { heading: "Who", kind: "text", width: 18, note: "paid it, or got the money" },
  { heading: "Paid out", kind: "number", format: FORMAT.money, width: 12, note: "an outlay" },
  { heading: "Came in", kind: "number", format: FORMAT.money, width: 12, note: "a receipt" },
  {
    heading: "Says",
    formula:
      '=IF(AND([@[Paid out]]="", [@[Came in]]=""), "", IF(OR([@Who]={First partner}, [@Who]={Second partner}), "", "WHO? neither partner"))',
    width: 22,
    note: "if a row is of neither partner",
  },
];

const laidOut = (label: string, partner: string): Figure => ({
  label,
  formula: `=SUMIFS(Table[Paid out], Table[Who], {${partner}})`,
  format: FORMAT.money,
  note: "own outlays",
});
const gets = (label: string, row: number): Figure => ({
  label,
  formula: `=INDEX(${SHARES}, ${row}, 4)`,
  format: FORMAT.money,
  note: "own outlay back first, then the share of the rest",
});
const stillGets = (label: string, all: string, partner: string): Figure => ({
  label,
  formula: `={${all}}-SUMIFS(Table[Came in], Table[Who], {${partner}})`,
  format: FORMAT.money,
  note: "less what came in to that partner; minus: to hand over",
});

const FIGURES: readonly Figure[] = [
  { label: "Came in", formula: "=SUM(Table[Came in])", format: FORMAT.money, note: "all receipts" },
  laidOut("First laid out", "First partner"),
  laidOut("Second laid out", "Second partner"),
  {
    label: "Of neither",
    formula: '=COUNTIF(Table[Says], "WHO*")',
    format: FORMAT.whole,
    note: "rows that the reckoning cannot give to a partner: must be 0",
  },
  gets("First gets", 2),
  gets("Second gets", 3),
  stillGets("First still gets", "First gets", "First partner"),
  stillGets("Second still gets", "Second gets", "Second partner"),
];

/** Outlays and receipts of two partners, one a row, and what each of them gets. */
export const PARTNER_ACCOUNT: TableSheet = {
  title: "Partner account",
  table: "PartnerAccount",
  lead: "Split the money with your partner: type both names and shares first, then a row for each outlay or receipt, and who paid it or got it. Each gets back the own outlay, then a share of the rest; who owes whom?",
  cautions: [
    PARTNERS_AGREE,
    "what a partner may take out, and when, is for your agreement and the accountant too: leave in what the tax and the next logs want. Own hours are no outlay.",
  ],
  settings: [
    { label: "First partner", kind: "text", value: "Ada, invented", note: "as in the column Who" },
    { label: "Second partner", kind: "text", value: "Ben, invented", note: "as in the column Who" },
    { label: "Share of the first", kind: "number", value: 60, note: "plain numbers: only their proportion counts" },
    { label: "Share of the second", kind: "number", value: 40, note: "(invented)" },
  ],
  figures: FIGURES,
  columns: COLUMNS,
  examples: [
    { Day: new Date(Date.UTC(2025, 2, 3)), What: "two logs, invented", Who: "Ben, invented", "Paid out": 180 },
    {
      Day: new Date(Date.UTC(2025, 2, 4)),
      What: "fuel for the haul, invented",
      Who: "Ada, invented",
      "Paid out": 64.5,
    },
    { Day: new Date(Date.UTC(2025, 5, 20)), What: "slab sold, invented", Who: "Ada, invented", "Came in": 650 },
  ],
  blankRows: 22,
  print: { upright: true },
  beside: {
    heading: "The reckoning; partner 1 is the first above",
    formula: `=${SHARES}`,
    rows: 5,
    columns: [
      { width: 14 },
      { width: 18, format: FORMAT.money },
      { width: 18, format: FORMAT.money },
      { width: 14, format: FORMAT.money },
    ],
  },
};
