import type { Beside, Row, TableSheet } from "../definition";
import { FILLED, FORMAT } from "../formats";

const PLAN = "Table[[Thickness]:[Green size]], Table[[Diameter]:[Log]], {Kerf}, {name of crosscut kerf}:{least}";

/** Where a row or a column of the plan stands in it, by its name. */
const rowOf = (name: string) => `MATCH("${name}", {beside}:{beside foot}, 0)`;
const columnOf = (name: string) => `MATCH("${name}", INDEX({beside}:{beside end}, 1, 0), 0)`;
const inPlan = (row: string, column: string) => `INDEX({beside}:{beside end}, ${row}, ${column})`;
const sum = (row: string, column: string) => `=IFERROR(${inPlan(rowOf(row), columnOf(column))}, 0)`;

/** The plan has a column for every row of the order, after its own. */
const MADE = inPlan(rowOf("made"), `${columnOf("board feet")}+ROW([@Count])-ROW({beside})`);
/** A log without a name goes by its row. */
const NAME = 'IF([@Log]="", ROW([@Log])-ROW({beside}), [@Log])';

/** The plan has a column for each line of the orders, and then room for its notes. */
function planColumns(lines: number): Beside["columns"] {
  return [
    { width: 14 },
    { width: 9 },
    { width: 8, format: FORMAT.two },
    { width: 9, format: FORMAT.one },
    { width: 9, format: FORMAT.one },
    ...Array.from({ length: lines }, () => ({ width: 10, format: FORMAT.whole })),
    { width: 40 },
  ];
}

/** What customers want against what lies in the yard: which logs to saw, what each gives to whom, and what stays short. */
export const ORDERS: TableSheet = {
  title: "Orders",
  heading: "Orders: which logs to saw for them",
  table: "Orders",
  lead: "Left the orders, right the logs that may be sawn for them, of one kind of wood: the rows of the two have nothing to do with each other. The plan beside them takes the least wood. It reckons anew at every change, which takes a second or two where there are many.",
  cautions: [
    "the plan knows sound, straight, round logs sawn through and through. Look at each log for rot, metal and sweep, check its fit in the mill and the maker's limits, and keep a log in hand.",
  ],
  settings: [
    { label: "Kerf", kind: "text", value: "1/8", note: "inches (invented: measure a cut)", name: "Order_kerf" },
    { label: "crosscut kerf", kind: "text", value: "1/8", note: "inches lost where a strip is cut to length" },
    { label: "rip kerf", kind: "text", value: "1/8", note: "inches lost where a flitch is ripped" },
    { label: "bed clearance", kind: "text", value: "1", note: "inches: clears dogs and rests" },
    { label: "trim", kind: "text", value: "2", note: "inches of length over the order's, on every piece" },
    { label: "taper", kind: "text", value: "0.5", note: "inches of diameter in 4 ft, where no large end is given" },
    { label: "guide opening", kind: "text", value: "36", note: "inches between the blade guides (invented)" },
    { label: "least", kind: "text", value: "wood", note: "wood, or cost: then every log needs its cost" },
  ],
  figures: [
    { label: "Ordered", formula: sum("ordered", "board feet"), format: FORMAT.one, note: "board feet" },
    { label: "Short", formula: sum("short", "board feet"), format: FORMAT.one, note: "board feet that no log gives" },
    { label: "Logs to saw", formula: '=COUNTIF(Table[Do], "saw")', format: FORMAT.whole, note: "" },
    { label: "Wood they hold", formula: sum("made", "wood"), format: FORMAT.one, note: "board feet, solid" },
    {
      label: "How near the best",
      formula: `=IFERROR(${inPlan(rowOf("bound"), columnOf("note"))}, "no plan yet: see beside the table")`,
      note: "",
    },
  ],
  columns: [
    { heading: "Thickness", kind: "text", width: 17, note: "4/4, 5/4, 8/4", list: "thicknesses" },
    { heading: "Width", kind: "text", width: 9, note: "inches" },
    { heading: "Length", kind: "text", width: 9, note: "feet" },
    { heading: "Count", kind: "text", width: 9, note: "or stock: as many as come" },
    { heading: "Customer", kind: "text", width: 18 },
    { heading: "Green size", kind: "text", width: 11, note: "inches to saw; blank: 1/8 over" },
    {
      heading: "Made",
      formula: `=IF([@Count]="", "", IFERROR(${MADE}, "see plan"))`,
      format: FILLED.whole,
      width: 9,
      note: "by the plan",
    },
    {
      heading: "Missing",
      formula: '=IF([@Count]="", "", IFERROR(MAX(0, [@Count]-[@Made]), 0))',
      format: FILLED.whole,
      width: 9,
      note: "pieces",
    },
    { heading: "Diameter", kind: "text", width: 11, note: "inches, small end inside bark" },
    { heading: "Log length", kind: "text", width: 11, note: "feet; 8-6 is 8 ft 6 in" },
    { heading: "Large end", kind: "text", width: 11, note: "inches; may be blank" },
    { heading: "Cost", kind: "number", width: 10, note: "money; may be blank" },
    { heading: "Log", kind: "text", width: 10, note: "number or tag" },
    {
      heading: "Do",
      formula: `=IF([@Diameter]="", "", IF(COUNTIF({beside}:{beside foot}, ${NAME})>0, "saw", "keep"))`,
      width: 8,
      note: "by the plan",
    },
  ],
  examples: [
    {
      Thickness: "8/4",
      Width: "8",
      Length: "8",
      Count: "4",
      Customer: "Miller, invented",
      Diameter: "12",
      "Log length": "8-4",
      Log: "A1",
    },
    {
      Thickness: "4/4",
      Width: "6",
      Length: "8",
      Count: "4",
      Customer: "Baker, invented",
      Diameter: "13",
      "Log length": "8-4",
      Log: "A2",
    },
    { Thickness: "4/4", Width: "4", Length: "4", Count: "stock", Diameter: "14", "Log length": "8-4", Log: "A3" },
    { Diameter: "17", "Log length": "8-4", Log: "A4" },
  ],
  blankRows: 16,
  beside: {
    heading: "The plan: pieces that each log gives to each line of the orders",
    formula: `=BOLE.ORDERPLAN(${PLAN})`,
    rows: 45,
    columns: planColumns(3),
  },
};

/** The same with a yard's own rows. */
export function ordersOf(rows: readonly Row[]): TableSheet {
  const lines = rows.filter(({ Count }) => Count !== undefined && Count !== null).length;
  return { ...ORDERS, examples: rows, beside: { ...ORDERS.beside!, columns: planColumns(lines) } };
}
