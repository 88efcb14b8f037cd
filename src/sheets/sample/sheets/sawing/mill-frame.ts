import type { Line } from "../../drawing/figures";
import { FORMAT } from "../../../formats";

/* Every typed figure is invented: none is advice for another mill. */

/** The opening a log must pass, and the rail it lies on. */
export const BED: readonly Line[] = [
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

/** The screw that lifts the saw head, and its chain. */
export const LIFT: readonly Line[] = [
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
