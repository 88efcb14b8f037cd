import type { Column, Figure, TableSheet } from "../definition";
import { FILLED, FORMAT } from "../formats";

const OF_BLADE = "Table[Blade], [@Blade]";
const SO_FAR = 'Table[Line], "<="&[@Line]';
/** The line on which the blade of this row last went on fresh; 0 where it never did, and all its feet count. */
const LAST_FRESH = `MAX(0, MAXIFS(Table[Line], ${OF_BLADE}, Table[Fresh], "yes", ${SO_FAR}))`;
const IS_LATEST = `[@Line]=MAXIFS(Table[Line], ${OF_BLADE})`;

const TYPED: readonly Column[] = [
  { heading: "Blade", kind: "text", width: 21, note: "number or tag" },
  { heading: "Day", format: FORMAT.date, width: 13, note: "a date; newest at the foot" },
  { heading: "Fresh", kind: "text", width: 8, note: "yes: new, sharp" },
  { heading: "Log", kind: "text", width: 16, note: "what was sawn" },
  { heading: "Small end", kind: "text", width: 9, note: "inches inside bark" },
  { heading: "Length", kind: "text", width: 9, note: "feet; 8-6 is 8 ft 6 in" },
  { heading: "Pattern", kind: "text", width: 10, note: "live if blank", list: "patterns" },
  { heading: "Own count", kind: "number", width: 9, note: "square feet, no log" },
];

const WORKED_OUT: readonly Column[] = [
  {
    heading: "Face",
    formula:
      '=IF([@[Own count]]<>"", [@[Own count]], IF([@[Small end]]="", 0, ' +
      'BOLE.SAWNFACE([@[Small end]], [@Length], {Boards}, {Kerf}, IF([@Pattern]="", "live", [@Pattern]))))',
    format: FILLED.one,
    width: 9,
    note: "square feet sawn",
  },
  {
    heading: "Line",
    formula: '=IF([@Blade]="", 0, ROW([@Blade])-ROW(INDEX(Table[Blade], 1))+1)',
    format: FILLED.whole,
    width: 7,
    note: "of the log",
  },
  {
    heading: "Since fresh",
    formula: `=IF([@Blade]="", 0, SUMIFS(Table[Face], ${OF_BLADE}, Table[Line], ">="&${LAST_FRESH}, ${SO_FAR}))`,
    format: FILLED.one,
    width: 9,
    note: "square feet",
  },
  {
    heading: "Left",
    formula: '=IF([@Blade]="", "", {Face a sharpening}-[@[Since fresh]])',
    format: FORMAT.one,
    width: 9,
    note: "before it is dull",
  },
  {
    heading: "Verdict",
    formula: `=IF([@Blade]="", "", IF(${IS_LATEST}, IF([@Left]<=0, "OVER: sharpen it", IF([@Left]<[@Face], "not one more like it", "saws on")), ""))`,
    width: 19,
    note: "where the blade stands last",
    marksOver: true,
  },
  {
    heading: "Cost",
    formula: '=IF([@Face]="", 0, [@Face]*{Cost of a foot})',
    format: FILLED.money,
    width: 8,
    note: "of blade, for this",
  },
];

const FIGURES: readonly Figure[] = [
  {
    label: "Cost of a foot",
    formula: "=BOLE.BLADECOST({Price of a blade}, {Sharpenings}, {A sharpening costs}, {Face a sharpening})",
    format: "0.0000",
    note: "money for a square foot of face",
  },
  { label: "Face sawn", formula: "=SUM(Table[Face])", format: FORMAT.one, note: "square feet, all blades" },
  { label: "Blades cost so far", formula: "=SUM(Table[Cost])", format: FORMAT.money, note: "money, by the feet sawn" },
  {
    label: "Yours reach",
    formula: '=IF(COUNTIF(Table[Fresh], "yes")=0, 0, {Face sawn}/COUNTIF(Table[Fresh], "yes"))',
    format: FORMAT.one,
    note: "square feet each time one went on: hold it against what is typed above",
  },
  {
    label: "To sharpen now",
    formula: '=COUNTIF(Table[Verdict], "OVER*")',
    format: FORMAT.whole,
    note: "blades; the column Verdict names them",
  },
];

/** Every use of a blade: the face it has sawn since it was sharp, and which blade wants sharpening. */
export const BLADE_LOG: TableSheet = {
  title: "Blade log",
  table: "BladeLog",
  lead: "Which blade to sharpen: type how much face a sharpening lasts and what a blade costs first, then a row each time a blade saws, or goes on new or sharpened. Square feet sawn since, what is left before it is dull, and its cost.",
  cautions: [
    "a band springs and cuts when it is uncoiled or leaves its wheel: lock out the power, wear gloves and glasses. A cracked blade is done, however little it has sawn (common practice, no source).",
  ],
  settings: [
    { label: "Face a sharpening", kind: "number", value: 400, note: "square feet it lasts (invented: count yours)" },
    { label: "Price of a blade", kind: "number", value: 28, note: "money (invented)" },
    { label: "Sharpenings", kind: "number", value: 5, note: "before it is thrown away (invented)" },
    { label: "A sharpening costs", kind: "number", value: 8, note: "money (invented)" },
    { label: "Boards", kind: "text", value: "4/4", note: "thickness that logs are sawn to", list: "thicknesses" },
    { label: "Kerf", kind: "text", value: "1/8", note: "inches; measure a cut" },
  ],
  figures: FIGURES,
  frozenColumns: 1,
  columns: [...TYPED, ...WORKED_OUT],
  examples: [
    {
      Blade: "1, invented",
      Day: new Date(Date.UTC(2025, 8, 1)),
      Fresh: "yes",
      Log: "A1, invented",
      "Small end": "20",
      Length: "8-6",
    },
    {
      Blade: "1, invented",
      Day: new Date(Date.UTC(2025, 8, 2)),
      Log: "A2, invented",
      "Small end": "26",
      Length: "10",
      Pattern: "slab",
    },
    { Blade: "2, invented", Day: new Date(Date.UTC(2025, 8, 2)), Fresh: "yes", Log: "edging", "Own count": 90 },
  ],
  blankRows: 12,
};
