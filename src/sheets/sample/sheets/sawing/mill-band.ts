import type { Line } from "../../drawing/figures";
import { FORMAT } from "../../../formats";

/* Every typed figure is invented: none is advice for another mill. */

/** The band on its wheels, and how fast it runs. */
export const BAND: readonly Line[] = [
  { label: "Band wheel diameter", value: 42, unit: "in", name: "Wheel_diameter" },
  { label: "Wheel centers", value: 124, unit: "in", name: "Wheel_centers" },
  {
    label: "Band length",
    formula: "=BOLE.BANDLENGTH(Wheel_diameter, Wheel_diameter, Wheel_centers)",
    unit: "in",
    format: FORMAT.two,
  },
  {
    label: "Band speed",
    formula: "=BOLE.RIMSPEED(Wheel_diameter, Wheel_rpm)",
    unit: "ft/min",
    format: FORMAT.whole,
    key: true,
    name: "Key_band_speed",
    caution: "Only the maker can give a safe speed. A self-built wheel has no rating, and no sheet can give it one.",
  },
  {
    label: "Most the makers of wheel and blade allow",
    value: 5500,
    unit: "ft/min",
    format: FORMAT.whole,
    name: "Band_limit",
    says: "invented; type the makers' figure",
  },
  {
    label: "Speed against that limit",
    formula: '=IF(Key_band_speed>Band_limit, "OVER the limit", "under the limit typed")',
  },
  {
    label: "Drive frequency for 4,500 ft/min",
    formula: "=BOLE.DRIVEHERTZ(4500, Wheel_diameter, Motor_pulley, Wheel_pulley, Motor_poles, Plate_rpm, , Belt_slip)",
    unit: "Hz",
    format: FORMAT.one,
    key: true,
    name: "Key_drive_hertz",
  },
  {
    label: "Stress in the spinning rim",
    formula: "=BOLE.RIMSTRESS(Wheel_diameter, Wheel_rpm)",
    unit: "psi",
    format: FORMAT.whole,
    caution: "A plain ring's stress, no proof of a wheel: welds, spokes and cracks decide.",
  },
];

/** How hard the band is strained. */
export const TENSION: readonly Line[] = [
  { label: "Band width, without teeth", value: 2, unit: "in", name: "Band_width" },
  { label: "Band thickness", value: 0.05, unit: "in", format: FORMAT.three, name: "Band_thickness" },
  {
    label: "Stress to strain it to",
    value: 15000,
    unit: "psi",
    format: FORMAT.whole,
    name: "Strain_stress",
    says: "invented; take the blade maker's figure",
    caution: "Bending, straining, speed and warming add up. Stay under the maker's figure.",
  },
  {
    label: "Pull on the wheel",
    formula: "=BOLE.BANDSTRAIN(Band_width, Band_thickness, Strain_stress)",
    unit: "lbf",
    format: FORMAT.whole,
    key: true,
    name: "Wheel_pull",
    caution: "A band under strain can break and whip: wheels enclosed, nobody in line with it.",
  },
  { label: "Bore of the tension ram", value: 1.5, unit: "in", name: "Ram_bore" },
  {
    label: "Pressure on its gauge",
    formula: "=BOLE.RAMPRESSURE(Wheel_pull, Ram_bore)",
    unit: "psi",
    format: FORMAT.whole,
  },
  {
    label: "Stretch over 20 in of band",
    formula: "=BOLE.BANDSTRETCH(Strain_stress, 20)",
    unit: "in",
    format: FORMAT.four,
  },
  {
    label: "Stress from bending round the wheel",
    formula: "=BOLE.BANDBENDING(Band_thickness, Wheel_diameter)",
    unit: "psi",
    format: FORMAT.whole,
    name: "Bend_stress",
  },
  {
    label: "Stress from speed",
    formula: "=BOLE.BANDCENTRIFUGAL(Key_band_speed)",
    unit: "psi",
    format: FORMAT.whole,
    name: "Speed_stress",
  },
  {
    label: "Stress lost to 30 °F of warming",
    formula: "=BOLE.BANDHEATING(30)",
    unit: "psi",
    format: FORMAT.whole,
    says: "if the wheels stay where they are",
  },
  {
    label: "Straining, bending and speed together",
    formula: "=Strain_stress+Bend_stress+Speed_stress",
    unit: "psi",
    format: FORMAT.whole,
  },
];

/** What a tooth bites and what the cut takes. */
export const CUT: readonly Line[] = [
  { label: "Tooth spacing", value: 1.25, unit: "in", name: "Tooth_pitch" },
  { label: "Feed", value: 15, unit: "ft/min", name: "Feed" },
  {
    label: "Bite of each tooth",
    formula: "=BOLE.BITE(Feed, Key_band_speed, Tooth_pitch)",
    unit: "in",
    format: FORMAT.four,
    name: "Tooth_bite",
  },
  {
    label: "Feed for a bite of 0.01 in",
    formula: "=BOLE.FEEDFOR(0.01, Key_band_speed, Tooth_pitch)",
    unit: "ft/min",
    format: FORMAT.one,
  },
  { label: "Depth of cut", value: 48, unit: "in", name: "Cut_depth" },
  { label: "Gullet area", value: 0.45, unit: "sq in", name: "Gullet", says: "invented; trace one on squared paper" },
  {
    label: "Gullet filled",
    formula: "=BOLE.GULLETFILL(Tooth_bite, Cut_depth, Tooth_pitch, Gullet)",
    format: FORMAT.share,
  },
  {
    label: "Cutting energy of the wood",
    value: 4000,
    unit: "psi",
    format: FORMAT.whole,
    name: "Cut_energy",
    says: "invented; no table was seen: measure it from the motor's current",
  },
  {
    label: "Power at the cut",
    formula: "=BOLE.SAWPOWER(Cut_kerf, Cut_depth, Feed, Cut_energy)",
    unit: "hp",
    format: FORMAT.one,
    name: "Cut_power",
  },
  {
    label: "Torque on the wheel shaft",
    formula: "=BOLE.TORQUE(Cut_power, Wheel_rpm)",
    unit: "lbf ft",
    format: FORMAT.whole,
  },
  {
    label: "Motor current at 460 V",
    formula: '=BOLE.MOTORAMPS(Cut_power, 460, "91%", "83%")',
    unit: "A",
    format: FORMAT.one,
    caution: "Size wires and breakers by the local code, through an electrician.",
  },
];
