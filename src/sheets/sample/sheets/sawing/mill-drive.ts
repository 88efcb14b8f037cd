import type { Line } from "../../drawing/figures";
import { FORMAT } from "../../../formats";

/* Every typed figure is invented: none is advice for another mill. */

/** The motor on its drive. */
export const MOTOR: readonly Line[] = [
  { label: "Poles", value: 4, name: "Motor_poles", says: "motor plate" },
  {
    label: "Speed on the plate",
    value: 1765,
    unit: "rpm",
    format: FORMAT.whole,
    name: "Plate_rpm",
    says: "motor plate, at 60 Hz",
  },
  {
    label: "Drive set to",
    value: 60,
    unit: "Hz",
    name: "Drive_hertz",
    says: "frequency drive",
    caution: "Electrical work is for an electrician.",
  },
  {
    label: "Motor speed",
    formula: "=BOLE.MOTORRPM(Drive_hertz, Motor_poles, Plate_rpm)",
    unit: "rpm",
    format: FORMAT.whole,
    name: "Motor_rpm",
  },
];

/** From the motor to the wheel. */
export const DRIVE: readonly Line[] = [
  { label: "Motor pulley", value: 7, unit: "in", name: "Motor_pulley", says: "pitch diameter" },
  { label: "Wheel pulley", value: 27, unit: "in", name: "Wheel_pulley", says: "pitch diameter" },
  { label: "Belt slip", value: "1%", format: FORMAT.text, name: "Belt_slip", says: "measure both shafts under load" },
  {
    label: "Wheel speed",
    formula: "=BOLE.PULLEYRPM(Motor_rpm, Motor_pulley, Wheel_pulley, Belt_slip)",
    unit: "rpm",
    format: FORMAT.one,
    name: "Wheel_rpm",
  },
  {
    label: "Wheel pulley for 450 rpm",
    formula: "=BOLE.PULLEYSIZE(Motor_rpm, Motor_pulley, 450, Belt_slip)",
    unit: "in",
    format: FORMAT.two,
  },
  { label: "Shaft centers", value: 48, unit: "in", name: "Belt_centers" },
  {
    label: "Belt length",
    formula: "=BOLE.BELTLENGTH(Motor_pulley, Wheel_pulley, Belt_centers)",
    unit: "in",
    format: FORMAT.two,
  },
  {
    label: "Belt's hold on the motor pulley",
    formula: "=BOLE.BELTWRAP(Motor_pulley, Wheel_pulley, Belt_centers)",
    unit: "degrees",
    format: FORMAT.one,
  },
  { label: "Belt speed", formula: "=BOLE.RIMSPEED(Motor_pulley, Motor_rpm)", unit: "ft/min", format: FORMAT.whole },
];
