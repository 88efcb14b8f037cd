import type { Column, Figure, Setting, TableSheet } from "../definition";
import { FORMAT } from "../formats";

const PLAN = "{Small end}, {Length}, {Boards}:{and boards}, {Kerf}, {Pattern}, {name of large end}:{timber}";

/** A head scale is read down to 1/64 in, so that halves of its steps come out right. */
const FRACTION = (inches: string) => `BOLE.FRACTION(${inches}, 64)`;

/* The plan stands beside the list; the list shows its warnings first, then its passes. */
const LINE = "ROW()-ROW({beside})";
const NAMES = "{beside}:{beside foot}";
const IS_WARNING = `${LINE}<={Warnings}`;
const IS_OVER = `${LINE}>{Warnings}+{Passes}`;

/** A column of the plan, in the row that this line shows. */
const ofPlan = (column: number) =>
  `INDEX({beside}:{beside end}, IF(${IS_WARNING}, MATCH("warning", ${NAMES}, 0)+${LINE}-1, ${LINE}-{Warnings}+1), ${column})`;
const PASS = ofPlan(1);
const HEIGHT = ofPlan(2);
const WIDTH = ofPlan(4);
const LENGTH = ofPlan(5);
const DROP = ofPlan(7);
const BOARD = ofPlan(8);
const NOTE = ofPlan(10);

const inPasses = (shown: string) => `=IF(OR([@[Blade at]]="", [@[Blade at]]="STOP"), "", ${shown})`;
/** A pass that frees no board says so: an empty field might have been forgotten. */
const ofBoard = (shown: string) => inPasses(`IF(${BOARD}="", "none", ${shown})`);

const SHIM_UP = `"raise the small end "&${FRACTION("{Shim}")}&" in"`;
/** What the shim asks for stands where it is to be done. */
const SHIM = `IF({Shim}=0, "", IF(${PASS}=1, ${SHIM_UP}&"; ", IF(LEFT(${NOTE}, 12)="turn the log", "shim out; ", IF(LEFT(${NOTE}, 13)="turn the cant", ${SHIM_UP}&" again; ", IF(AND({Pattern}="quarter", ${PASS}=3), "shim out; ", "")))))`;

const COLUMNS: readonly Column[] = [
  {
    heading: "Blade at",
    formula: `=IF(${IS_OVER}, "", IF(${IS_WARNING}, "STOP", ${FRACTION(HEIGHT)}))`,
    width: 17,
    note: "inches on the head's scale",
    look: "large",
  },
  { heading: "Done", formula: inPasses('"\u2610"'), width: 12, note: "tick it", look: "large" },
  {
    heading: "Drop",
    formula: ofBoard(`IF(${DROP}="", "from bed", ${FRACTION(DROP)})`),
    width: 10,
    note: "inches",
  },
  { heading: "Board", formula: ofBoard(FRACTION(BOARD)), width: 9, note: "inches as sawn" },
  { heading: "Width", formula: ofBoard(`${WIDTH}&""`), width: 9, note: "inches" },
  { heading: "Length", formula: ofBoard(`${LENGTH}&""`), width: 8, note: "feet" },
  { heading: "Pass", formula: inPasses(PASS), width: 7, note: "of the plan" },
  {
    heading: "What to do",
    formula: `=IF(${IS_OVER}, "", IF(${IS_WARNING}, "WARNING: "&${NOTE}, ${SHIM}&${NOTE}))`,
    width: 38,
    note: "shim and turns as they come, and the product",
    look: "wrapped",
  },
];

/** Of the plan: pass, height, thickness, width, length, feet, drop, sawn, value, note. */
const PLAN_WIDTHS = [13, 12, 10, 16, 9, 11, 9, 9, 9, 60];

const setting = (label: string, value: string | number, note: string, list?: string): Setting => ({
  ...{ label, value, note, kind: "text" },
  ...(list && { list }),
});

/** What a mill sheet is for; a value may be a formula that takes it from the workbook's own log book. */
export interface MillLog {
  log: string;
  species: string;
  smallEnd: string;
  largeEnd: string;
  length: string;
  pattern: string;
}

const EXAMPLE: MillLog = {
  ...{ log: "example, invented", species: "white oak", smallEnd: "20", largeEnd: "22", length: "8-6", pattern: "live" },
};

const settingsFor = ({ log, species, smallEnd, largeEnd, length, pattern }: MillLog): Setting[] => [
  setting("Log", log, ""),
  setting("Species", species, "", "species"),
  setting("Day", "", ""),
  setting("Sawyer", "", ""),
  setting("Small end", smallEnd, "inches inside bark"),
  setting("Length", length, "feet; 8-6 is 8 ft 6 in"),
  setting("Pattern", pattern, "live, slab, cant, quarter, timber", "patterns"),
  setting("Kerf", "1/8", "inches; measure a cut"),
  setting("Boards", "4/4", "the first product", "thicknesses"),
  setting("and boards", "", "another, or blank", "thicknesses"),
  setting("large end", largeEnd, "inches inside bark"),
  setting("bed clearance", "1", "inches: clears dogs and rests"),
  setting("trim", "3", "inches of length"),
  setting("minimum width", "4", "inches"),
  setting("cant widths", pattern === "cant" ? "8, 10, 12" : "", "inches to try for a cant"),
  setting("timber", "", "its sides as sawn, such as 6x8"),
];

const FIGURES: readonly Figure[] = [
  { label: "Warnings", formula: `=COUNTIF(${NAMES}, "warning")`, note: "" },
  {
    label: "Shim",
    formula: `=IFERROR(INDEX({beside}:{beside end}, MATCH("shim", ${NAMES}, 0), 2), 0)`,
    format: "# ??/??",
    note: "",
  },
  { label: "Passes", formula: `=IFERROR(MATCH("total", ${NAMES}, 0)-2, 0)`, note: "" },
  {
    label: "Board feet",
    formula: `=IFERROR(INDEX({beside}:{beside end}, {Passes}+2, 6), 0)`,
    format: FORMAT.one,
    note: "",
  },
  {
    label: "All passes in the list",
    formula: '=IF({Warnings}+{Passes}>ROWS(Table[Pass]), "NO: copy the last row down", "yes")',
    note: "",
  },
];

/** The settings of the saw head for one log, to take to the mill: as many lines as its plan may need. */
export function millSheetOf(
  names: Pick<TableSheet, "title" | "table">,
  lines: number,
  log: MillLog = EXAMPLE,
): TableSheet {
  return {
    ...names,
    lead: "The passes for one log, to print and take to the mill: type the log, and tick each pass. Blade heights stand above the bed, at the blade's lower side.",
    cautions: [
      "lock out the power before you touch the blade. Dog the log, and stand clear of its fall when it is cut free or turned. Keep to the maker's limits.",
    ],
    settings: settingsFor(log),
    figures: FIGURES,
    figuresFrom: { label: 5, value: 8 },
    columns: COLUMNS,
    examples: Array.from({ length: lines }, () => ({})),
    blankRows: 0,
    beside: {
      heading: "The plan that the list shows, for the screen only",
      formula: `=BOLE.CUTPLAN(${PLAN})`,
      rows: lines + 20,
      columns: PLAN_WIDTHS.map((width) => ({ width })),
    },
    print: { upright: true, withoutBeside: true },
  };
}

/** With lines for a log sawn to a cant, which takes the most passes. */
export const MILL_SHEET = millSheetOf({ title: "Mill sheet", table: "MillSheet" }, 48);
