import type { TableSheet } from "../definition";
import { FILLED, FORMAT } from "../formats";
import { AIR, AIR_DRIES_TO } from "./drying-air";

/** One stack: what the air can do, what the sample board says, and when it will be ready. */
export const DRYING_STACK: TableSheet = {
  title: "Drying stack",
  table: "DryingStack",
  lead: "One stack: weigh its sample board now and then, or read a meter; the forecast at the right fits the drying curve to your readings.",
  cautions: [
    "a stack can fall: level base, stickers in line, no higher than three times its width. Drying faster than the wood allows checks it.",
  ],
  settings: [
    { label: "Species", kind: "text", value: "red oak", note: "(invented)", list: "species" },
    { label: "Thickness", kind: "text", value: "4/4", note: "(invented)", list: "thicknesses" },
    { label: "Board feet", kind: "number", value: 600, note: "in the stack, green (invented)" },
    { label: "Moisture at start", kind: "text", value: "75%", note: "percent of the oven-dry weight (invented)" },
    { label: "Dry to", kind: "text", value: "20%", note: "what the wood is wanted at" },
    ...AIR,
    {
      label: "Board at start",
      kind: "text",
      value: "14.0",
      note: "pounds of the sample board when stacked (invented)",
    },
  ],
  figures: [
    AIR_DRIES_TO,
    {
      label: "Water to lose lb",
      formula: "=BOLE.WATERTOLOSE({Species}, {Board feet}, {Moisture at start}, {Dry to})",
      format: FORMAT.whole,
      note: "out of the whole stack",
    },
    {
      label: "Days by the table",
      formula: "=BOLE.AIRDRYDAYS({Species}, {Thickness}, {Moisture at start}, {Dry to}, {Temperature}, {Humidity})",
      format: FORMAT.whole,
      note: "a rough guess from memory; your own readings are better",
    },
    {
      label: "Board bone dry",
      formula: "=BOLE.OVENDRYWEIGHT({Board at start}, {Moisture at start})",
      format: "0.00",
      note: "pounds; what the readings below are reckoned from",
    },
    {
      label: "Board when ready",
      formula: "=BOLE.WEIGHTAT({Board at start}, {Moisture at start}, {Dry to})",
      format: "0.00",
      note: "pounds the sample board weighs at the target",
    },
  ],
  columns: [
    { heading: "Day", kind: "number", width: 24, note: "days since stacking" },
    { heading: "Board weight", kind: "text", width: 14, note: "pounds; or leave blank" },
    { heading: "Meter", kind: "number", width: 11, note: "percent, if not weighed; pins read true below 25" },
    {
      heading: "Moisture",
      formula: `=IF([@[Board weight]]="", [@Meter], BOLE.MOISTURE([@[Board weight]], {Board bone dry}))`,
      format: FILLED.one,
      width: 11,
      note: "percent",
    },
    { heading: "Remark", kind: "text", width: 28, note: "weather, fans, turned" },
  ],
  examples: [
    { Day: 0, "Board weight": "14.0", Remark: "invented reading" },
    { Day: 30, "Board weight": "11.3", Remark: "invented reading" },
    { Day: 60, "Board weight": "10.2", Remark: "invented reading" },
  ],
  blankRows: 17,
  beside: {
    heading: "When it will be ready, from the readings",
    formula:
      '=IF(COUNT(Table[Day])<2, "two readings are the least", BOLE.DRYFORECAST(Table[Day], Table[Moisture], {Air dries to %}, {Dry to}))',
    rows: 6,
    columns: [{ width: 28 }, { width: 14, format: "0.0" }, { width: 44 }],
  },
};
