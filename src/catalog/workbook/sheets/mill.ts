import type { Draft } from "../draft";
import { drawLines, FIGURE_WIDTHS, figureHeader, type Line } from "../figures";
import { caution, freeze, markOver, startPage } from "../page";
import { FORMAT } from "../style";

/* Every typed figure of this mill is invented: none is advice for another. */

const MOTOR: readonly Line[] = [
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

const DRIVE: readonly Line[] = [
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

const BAND: readonly Line[] = [
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
    formula: "=BOLE.DRIVEHERTZ(4500, Wheel_diameter, Motor_pulley, Wheel_pulley, Motor_poles, Plate_rpm)",
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

const TENSION: readonly Line[] = [
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
    label: "Stress lost to 30 F of warming",
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

const CUT: readonly Line[] = [
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

const LIFT: readonly Line[] = [
  { label: "Saw head on one screw", value: 700, unit: "lb", format: FORMAT.whole, name: "Screw_load" },
  { label: "Screw's outside diameter", value: 1.375, unit: "in", name: "Screw_diameter" },
  { label: "Screw pitch", value: 0.25, unit: "in", format: FORMAT.three, name: "Screw_pitch" },
  { label: "Rise in one turn", formula: "=BOLE.SCREWRISE(1, Screw_pitch)", unit: "in", format: FORMAT.three },
  {
    label: "Torque to raise",
    formula: "=BOLE.SCREWTORQUE(Screw_load, Screw_diameter, Screw_pitch)",
    unit: "lbf in",
    format: FORMAT.whole,
  },
  {
    label: "Power at 20 in a minute",
    formula: "=BOLE.SCREWPOWER(Screw_load, 20, Screw_diameter, Screw_pitch)",
    unit: "hp",
    format: FORMAT.three,
  },
  {
    label: "Does the screw hold by itself?",
    formula: '=IF(BOLE.SCREWHOLDS(Screw_diameter, Screw_pitch), "yes, at rest", "no")',
    caution: "Vibration can back down a screw that holds on paper: prop the head before reaching under it.",
  },
  {
    label: "Links of No. 40 chain, 17 and 34 teeth",
    formula: "=BOLE.CHAINLINKS(17, 34, 20, 0.5)",
    unit: "links",
    says: "centers 20 in",
  },
  {
    label: "Sprocket centers for them",
    formula: "=BOLE.CHAINCENTERS(17, 34, BOLE.CHAINLINKS(17, 34, 20, 0.5), 0.5)",
    unit: "in",
    format: FORMAT.three,
  },
];

const BED: readonly Line[] = [
  {
    label: "Clear opening of the mill",
    value: 74,
    unit: "in",
    name: "Mill_opening",
    says: "invented: between the posts and under the beam",
  },
  { label: "Room to keep round a log", value: 1, unit: "in", name: "Opening_clearance" },
  { label: "Bed rail: height of the tube", value: 6, unit: "in", name: "Rail_height" },
  { label: "Bed rail: width", value: 4, unit: "in", name: "Rail_width" },
  { label: "Bed rail: wall", value: 0.25, unit: "in", format: FORMAT.three, name: "Rail_wall" },
  { label: "Span between supports", value: 4, unit: "ft", name: "Rail_span" },
  { label: "Log's weight on one rail", value: 8000, unit: "lb", format: FORMAT.whole, name: "Rail_load" },
  {
    label: "Weight of that tube",
    formula: "=BOLE.TUBEWEIGHT(Rail_height, Rail_width, Rail_wall, Rail_span)",
    unit: "lb",
    format: FORMAT.one,
  },
  {
    label: "Sag in the middle",
    formula: "=BOLE.TUBESAG(Rail_height, Rail_width, Rail_wall, Rail_span, Rail_load)",
    unit: "in",
    format: FORMAT.four,
    key: true,
    name: "Key_bed_sag",
    caution: "Sag only, no proof of strength: a frame that carries logs is for an engineer.",
  },
];

/** One invented mill, worked through from the motor's plate to the bed. */
export function drawMill(draft: Draft): void {
  const page = startPage(draft, "Mill", {
    title: "Mill: from the motor plate to the blade",
    lead: "One invented mill, figure by figure. The tinted cells have names (Motor_rpm, Wheel_diameter) so that a formula reads like a sentence; change them to yours.",
    widths: FIGURE_WIDTHS,
  });
  caution(
    page,
    3,
    "a spinning wheel and a strained band hold enough energy to kill. These figures check a set-up, they do not approve one: the makers' limits, the local code and a licensed engineer decide.",
  );
  figureHeader(page, 5);
  freeze(page, 5, 0);
  let row = 6;
  for (const [title, lines] of SECTIONS) row = drawLines(page, row, title, lines);
  markOver(page, "B", 6, row);
}

const SECTIONS: readonly [string, readonly Line[]][] = [
  ["Opening and bed", BED],
  ["Motor", MOTOR],
  ["Belt drive", DRIVE],
  ["Band and wheels", BAND],
  ["Band tension", TENSION],
  ["Tooth, feed and power", CUT],
  ["Lift", LIFT],
];
