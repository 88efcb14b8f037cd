import type { Draft } from "../../draft";
import { caution, markOver, startPage } from "../../drawing/page";
import { FORMAT } from "../../drawing/style";
import { type Column, drawMainTable } from "../../drawing/table";

const COLUMNS: readonly Column[] = [
  { header: "Drive Hz" },
  {
    header: "Motor rpm",
    formula: "=BOLE.MOTORRPM([@[Drive Hz]], Motor_poles, Plate_rpm)",
    format: FORMAT.whole,
  },
  {
    header: "Wheel rpm",
    formula: "=BOLE.PULLEYRPM([@[Motor rpm]], Motor_pulley, Wheel_pulley, Belt_slip)",
    format: FORMAT.one,
  },
  { header: "Band ft/min", formula: "=BOLE.RIMSPEED(Wheel_diameter, [@[Wheel rpm]])", format: FORMAT.whole },
  { header: "Against the limit", formula: '=IF([@[Band ft/min]]>Band_limit, "OVER: do not run", "under")' },
];
const HEADER_ROW = 6;
const HERTZ = [30, 35, 40, 45, 50, 55, 60, 65, 70];

/** Drive frequency against band speed, by the pulleys of the sheet Mill. */
export function drawBandSpeeds(draft: Draft): void {
  const page = startPage(draft, "Band speeds", {
    title: "Band speeds: what each drive frequency gives",
    lead: "By the motor, pulleys and wheels of the sheet Mill, against the limit typed there.",
    widths: [14, 16, 16, 18, 26],
    landscape: false,
  });
  caution(
    page,
    3,
    "the makers of wheel and blade set the limit; a self-built wheel has none that a sheet could give. Above the frequency on its plate a motor loses torque, and its maker and the drive's set the highest.",
    3,
  );
  const rows = HERTZ.map((hertz) => ({ "Drive Hz": hertz }));
  const last = drawMainTable(page, HEADER_ROW, "Drive", COLUMNS, rows, 0);
  markOver(page, "E", HEADER_ROW + 1, last + 50);
}
