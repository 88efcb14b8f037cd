import type { TableSheet } from "../definition";
import { FILLED } from "../formats";

/** How the mill is set up, one row for each set-up to compare: speed of the band, its stresses, bite of a tooth. */
export const MILL_SETTINGS: TableSheet = {
  title: "Mill settings",
  table: "MillSettings",
  lead: "A row for each set-up of the mill, as it is and as it might be: what the pulleys make of the motor, and what the band bears.",
  cautions: [
    "a spinning wheel and a strained band hold enough energy to kill. These figures check a set-up, they do not approve one: the makers' limits come first. Lock out before work, guards shut.",
  ],
  settings: [
    {
      label: "Band speed limit",
      kind: "number",
      value: "",
      note: "feet per minute; the lower of the makers of wheel and blade",
    },
  ],
  figures: [],
  columns: [
    { heading: "Set-up", kind: "text", width: 24, note: "as it is, or as it might be" },
    { heading: "Motor rpm", kind: "number", width: 9, note: "on its plate, under load" },
    { heading: "Motor pulley", kind: "text", width: 9, note: "inches" },
    { heading: "Wheel pulley", kind: "text", width: 9, note: "inches" },
    { heading: "Wheel", kind: "text", width: 9, note: "inches across" },
    { heading: "Band width", kind: "text", width: 9, note: "inches behind the gullets" },
    { heading: "Band thickness", kind: "text", width: 10, note: "inches" },
    { heading: "Strain", kind: "text", width: 9, note: "pounds on the wheel" },
    { heading: "Tooth pitch", kind: "text", width: 9, note: "inches" },
    { heading: "Feed", kind: "text", width: 9, note: "feet per minute" },
    {
      heading: "Wheel rpm",
      formula: "=BOLE.PULLEYRPM([@[Motor rpm]], [@[Motor pulley]], [@[Wheel pulley]])",
      format: FILLED.whole,
      width: 9,
      note: "no slip",
    },
    {
      heading: "Band speed",
      formula: "=BOLE.RIMSPEED([@Wheel], [@[Wheel rpm]])",
      format: FILLED.whole,
      width: 9,
      note: "feet per minute",
    },
    {
      heading: "Against the limit",
      formula: `=IF([@Wheel]="", "", IF({Band speed limit}="", "limit not given", IF([@[Band speed]]>{Band speed limit}, "OVER: do not run", "under")))`,
      width: 16,
      note: "",
      caution: "the makers' limit, above",
    },
    {
      heading: "Pull psi",
      formula: `=IF([@Strain]="", 0, BOLE.BANDSTRESS([@Strain], [@[Band width]], [@[Band thickness]]))`,
      format: FILLED.whole,
      width: 10,
      note: "",
      caution: "maker's limit",
    },
    {
      heading: "Bending psi",
      formula: `=IF([@[Band thickness]]="", 0, BOLE.BANDBENDING([@[Band thickness]], [@Wheel]))`,
      format: FILLED.whole,
      width: 10,
      note: "at the face, round the wheel",
    },
    {
      heading: "Bite",
      formula: `=IF([@Feed]="", 0, BOLE.BITE([@Feed], [@[Band speed]], [@[Tooth pitch]]))`,
      format: FILLED.three,
      width: 8,
      note: "inches a tooth",
    },
  ],
  examples: [
    {
      "Set-up": "Example, invented",
      "Motor rpm": 1160,
      "Motor pulley": "12.4",
      "Wheel pulley": "21.1",
      Wheel: "28",
      "Band width": "1 1/4",
      "Band thickness": "0.042",
      Strain: "2200",
      "Tooth pitch": "7/8",
      Feed: "35",
    },
  ],
  blankRows: 7,
  print: { newPageAt: ["Wheel rpm"] },
};
