import { exampleList } from "./examples";
import { escaped } from "../../xlsx/escaped";
import { page, pairs } from "./html";

/** What a bare number means, by what is asked for, and the text that is read besides. */
const KINDS: readonly [kind: string, bare: string, text: string][] = [
  ["Diameter, width, thickness, kerf", "inches", `14 1/2, 14-1/2, 14½, 5/4, 4Q, 8'6", 45 cm, 300 mm`],
  ["Length of a log, board or span", "feet", `8'6", 8' 6-1/2", 8ft 6in, 8-6 (8 ft 6 in), 102", 2.4 m`],
  ["Weight", "pounds", "40 lb, 18 kg, 850 g, 30 oz, 1.2 t (metric)"],
  ["Moisture", "percent; up to 3 it is a share, so a cell formatted as percent works: 0.12 is 12 %", "12%"],
  ["Humidity, share, slip, waste", "percent; up to 1 it is a share: 0.65 is 65 %", "65%"],
  ["Temperature", "degrees Fahrenheit", "68 F, 20 C"],
  ["Speed of a rim, band or feed", "feet per minute", "60 ft/min, 25 m/s, 10 m/min"],
  ["Force", "pounds", "2500 lb, 11 kN, 1134 kg or kgf (what a kilogram weighs)"],
  ["Stress, pressure", "psi", "15 ksi, 100 MPa, 70 bar"],
  ["Power", "horsepower", "20 hp, 15 kW"],
  ["Money", "your currency", "none: a plain number, without its sign"],
  [
    "Name of a rule, species or choice",
    "",
    "capitals, spaces and hyphens do not matter; a wrong name is answered with the nearest ones",
  ],
];

/** Shown on the page and asked by the tests. */
export const READING_EXAMPLES = [
  { formula: '=BOLE.MEASURE("14-1/2")', result: "14.5" },
  { formula: '=BOLE.MEASURE("5/4")', result: "1.25" },
  { formula: '=BOLE.MEASURE("8\'6""")', result: "102" },
  { formula: '=BOLE.MEASURE("254 mm")', result: "10" },
  { formula: '=BOLE.MEASURE("1,5")', result: "#VALUE!" },
  { formula: "=BOLE.MEASURE(46147)", result: "#VALUE!" },
];

export const BLANK_EXAMPLES = [
  { formula: "=BOLE.LOGSCALE(0, 0)", result: "0" },
  { formula: "=BOLE.LOGSCALE(20, 0)", result: "#VALUE!" },
  { formula: '=BOLE.LOGSCALE(3, 12, "Doyle")', result: "#N/A" },
];

export const COLUMN_EXAMPLES = [
  { formula: '=BOLE.LOGSCALE({20;24;3}, 12, "Doyle")', result: "{192;300;#N/A}" },
  { formula: '=BOLE.LOGSCALE({20;24}, {12,16}, "Doyle")', result: "{192,256;300,400}" },
];

/** How a cell is read, once for all functions. */
export function readingPage(): string {
  return page(
    "How Bole reads a cell",
    "Numbers, lengths as text, blanks, columns, lists and errors in Bole's functions",
    `<h1>How Bole reads a cell</h1>`,
    `<p>The same rules hold for every function.</p>`,
    `<h2>Numbers and text</h2>`,
    pairs(
      KINDS.map(([kind, bare, text]) => [
        escaped(kind),
        ...(bare ? [`Bare number: ${escaped(bare)}`] : []),
        `Text: ${escaped(text)}`,
      ]),
    ),
    `<p>In doubt ask <a href="MEASURE.html">MEASURE</a>: it answers a length as Bole reads it.</p>`,
    exampleList(READING_EXAMPLES),
    `<h3>Format entry columns as Text</h3>`,
    `<p>Typed into an ordinary cell, <code>5/4</code> and <code>8-6</code> become dates before any formula sees them. Bole refuses a date with a message. Format the column as Text first, or type an apostrophe before it: <code>'5/4</code>.</p>`,
    `<p>A comma inside a number is refused, for it could mean either thing: type 1.5 or 1500.</p>`,
    `<h2>Blanks and errors</h2>`,
    `<p>A blank cell and a 0 are the same where a number cannot be 0, such as a diameter or a price. A row nobody has filled in answers 0, so that a total below it still adds up; one value that stands for the whole column, such as a common length, begins no row. A row begun but not finished answers #VALUE!, which names what is missing. An argument in brackets may be left out; its page says what Bole takes then.</p>`,
    exampleList(BLANK_EXAMPLES),
    `<p><strong>#VALUE!</strong> means that a cell cannot be read. <strong>#N/A</strong> means that the rule, the table or physics has no answer there, and the message says between which limits it has. Click the warning sign beside the cell to read it. An error in a cell that a formula looks at is handed on as it is. <strong>#NAME?</strong> means that Excel has not started Bole; <strong>#SPILL!</strong> that something stands in the cells the answer needs.</p>`,
    `<h2>Columns, lists and tables</h2>`,
    `<p>Where one cell is asked for, a whole column may stand: the answers then fill a column beside it. One value goes with every row, a column goes with a column row by row, and a row against a column fills a grid. A bad row holds its own error; the others still answer.</p>`,
    exampleList(COLUMN_EXAMPLES),
    `<p>Where a function asks for a list, such as the weights aboard or the widths of a slab, the whole range is one argument. Blank cells in it are passed over, but not between readings at equal steps: there a gap would shift the rest, and is refused. Settings are two columns, name and value, in any order.</p>`,
    `<p>A function that answers a table fills cells to the right and below, headings first. Leave room for it, and do not put it into an Excel table, which has no room for it.</p>`,
  );
}
