import type { Column, Figure, TableSheet } from "../definition";
import { FILLED, FORMAT } from "../formats";
import { AIR, AIR_DRIES_TO } from "./drying-air";

const ofShown = (shown: string) => `=IF(AND([@Stack]={Stack to forecast}, [@Reading]<>""), ${shown}, "")`;

const COLUMNS: readonly Column[] = [
  { heading: "Day", format: FORMAT.date, width: 18, note: "a date; each once a stack, in order" },
  { heading: "Stack", kind: "text", width: 25, note: "number or tag" },
  { heading: "Reading", kind: "number", format: FORMAT.one, width: 9, note: "percent" },
  { heading: "Wood temp", kind: "text", width: 10, note: "F; blank: as read" },
  {
    heading: "Corrected",
    formula: '=IF([@Reading]="", 0, IF([@[Wood temp]]="", [@Reading], BOLE.METERREADING([@Reading], [@[Wood temp]])))',
    format: FILLED.one,
    width: 10,
    caution: "pin meter, 6 to 25 %",
  },
  {
    heading: "To go",
    formula: '=IF([@Reading]="", "", [@Corrected]-{Dry to %})',
    format: FORMAT.one,
    width: 8,
    note: "points",
  },
  { heading: "Day shown", formula: ofShown("[@Day]"), format: FORMAT.date, width: 11, note: "of the stack above" },
  {
    heading: "Moisture shown",
    formula: ofShown("[@Corrected]"),
    format: FORMAT.one,
    width: 11,
    note: "of it, percent",
  },
  { heading: "Remark", kind: "text", width: 14, note: "weather, fans" },
];

/** A row of the forecast, once there are readings enough for it. */
const forecast = (label: string, row: number, format: string, note: string): Figure => ({
  label,
  formula: `=IF(COUNT(Table[Day shown])<2, "two readings are the least", INDEX(BOLE.DRYFORECAST(Table[Day shown], Table[Moisture shown], {Air dries to %}, {Dry to %}), ${row}, 2))`,
  format,
  note,
});
const onceRead = (shown: string) => `=IF(COUNT(Table[Day shown])=0, "no reading yet", ${shown})`;

const FIGURES: readonly Figure[] = [
  AIR_DRIES_TO,
  { label: "Latest reading", formula: onceRead("MAX(Table[Day shown])"), format: FORMAT.date, note: "its day" },
  {
    label: "Moisture then",
    formula: onceRead("SUMIFS(Table[Moisture shown], Table[Day shown], {Latest reading})"),
    format: FORMAT.one,
    note: "percent, set right for the wood's temperature",
  },
  { label: "Left to target", formula: onceRead("{Moisture then}-{Dry to %}"), format: FORMAT.one, note: "points" },
  forecast("Ready on", 2, FORMAT.date, "by the drying curve through its readings"),
  forecast("At the earliest", 3, FORMAT.date, "from three readings on"),
  forecast("At the latest", 4, FORMAT.date, "from three readings on"),
  forecast("Days to wait", 5, FORMAT.whole, "after the latest reading; minus: it is dry already"),
];

/** Moisture readings of all stacks, one a row, set right for the temperature of the wood; one stack is forecast. */
export const DRYING_LOG: TableSheet = {
  title: "Drying log",
  table: "DryingLog",
  lead: "Moisture meter readings of all your stacks in one list: type the target and the air first, then a row a reading, with the wood's temperature. Name a stack to see when it will be ready.",
  cautions: [
    "a pin meter does not read true above about 25 to 30 % (common practice, no source), and not in frozen wood: weigh a sample board until then. Your meter's maker knows its corrections for the species.",
    "a kiln is hot, wet and under fans: let it cool and stop the fans before you go in to read (common practice, no source).",
  ],
  settings: [
    { label: "Stack to forecast", kind: "text", value: "Stack 1, invented", note: "as in the column Stack" },
    { label: "Dry to %", kind: "number", value: 15, note: "what the wood is wanted at (invented)" },
    ...AIR,
  ],
  figures: FIGURES,
  columns: COLUMNS,
  examples: [
    { Day: new Date(Date.UTC(2025, 5, 2)), Stack: "Stack 1, invented", Reading: 24, "Wood temp": "66" },
    { Day: new Date(Date.UTC(2025, 5, 4)), Stack: "Stack 2, invented", Reading: 18.5, "Wood temp": "70" },
    { Day: new Date(Date.UTC(2025, 5, 23)), Stack: "Stack 1, invented", Reading: 20.5, "Wood temp": "76" },
    { Day: new Date(Date.UTC(2025, 6, 14)), Stack: "Stack 1, invented", Reading: 18, "Wood temp": "84" },
  ],
  blankRows: 21,
  print: { upright: true },
};
