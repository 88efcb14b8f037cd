import type { Column, TableSheet } from "../../../definition";
import { FORMAT } from "../../../formats";
import type { Draft } from "../../draft";
import { drawTableSheet } from "../../drawing/table-sheet";

const COLUMNS: readonly Column[] = [
  { heading: "Drive Hz", width: 16 },
  {
    heading: "Motor rpm",
    width: 16,
    formula: "=BOLE.MOTORRPM([@[Drive Hz]], Motor_poles, Plate_rpm)",
    format: FORMAT.whole,
  },
  {
    heading: "Wheel rpm",
    width: 16,
    formula: "=BOLE.PULLEYRPM([@[Motor rpm]], Motor_pulley, Wheel_pulley, Belt_slip)",
    format: FORMAT.one,
  },
  {
    heading: "Band ft/min",
    width: 18,
    formula: "=BOLE.RIMSPEED(Wheel_diameter, [@[Wheel rpm]])",
    format: FORMAT.whole,
  },
  {
    heading: "Against the limit",
    marksOver: true,
    width: 26,
    formula: '=IF([@[Band ft/min]]>Band_limit, "OVER: do not run", "under")',
  },
];
const HERTZ = [30, 35, 40, 45, 50, 55, 60, 65, 70];

const BAND_SPEEDS: TableSheet = {
  title: "Band speeds",
  heading: "Band speeds: what each drive frequency gives",
  table: "Drive",
  lead: "By the motor, pulleys and wheels of the sheet Mill, against the limit typed there.",
  cautions: [
    "the makers of wheel and blade set the limit; a self-built wheel has none that a sheet could give. Above the frequency on its plate a motor loses torque, and its maker and the drive's set the highest.",
  ],
  settings: [],
  figures: [],
  frozenColumns: 0,
  columns: COLUMNS,
  examples: HERTZ.map((hertz) => ({ "Drive Hz": hertz })),
  blankRows: 0,
  print: { upright: true },
};

/** Drive frequency against band speed, by the pulleys of the sheet Mill. */
export function drawBandSpeeds(draft: Draft): void {
  drawTableSheet(draft, BAND_SPEEDS);
}
