import {
  arrow,
  box,
  circle,
  curve,
  dashed,
  degrees,
  dimension,
  dot,
  label,
  line,
  moved,
  n,
  name,
  oval,
  WOOD,
  type Picture,
  type Point,
} from "../../functions/drawing/marks";

const HOOK: Point = [170, 28];

export const sling: Picture = {
  title: "Sling angle, from the horizontal",
  desc: "A log hanging by a sling of two legs. The angle is taken between a leg and the horizontal: the flatter the legs, the harder each pulls. Under 30 degrees is refused.",
  height: 184,
  parts: [
    `<circle cx="170" cy="20" r="8"/>`,
    line(HOOK, [80, 130]),
    line(HOOK, [260, 130]),
    dashed([80, 130], [260, 130]),
    curve("M40 132H300V176H40Z", WOOD),
    oval([40, 154], 7, 22, WOOD),
    curve(arcOf([80, 130], 34, 0, -50.7)),
    name([120, 120], "angle", "start"),
    label([236, 78], "pull in a leg", "start"),
    name([170, 159], "weight"),
  ],
};

export const tongue: Picture = {
  title: "Positions ahead of the axle",
  desc: "A trailer from the side with the hitch to the left and one axle. A load's position is how far its middle lies ahead of the axle; behind the axle it is minus. The hitch is measured from the axle too.",
  height: 200,
  parts: [
    line([20, 112], [320, 112]),
    line([100, 106], [320, 106]),
    circle([230, 122], 16),
    dot([230, 122]),
    dot([24, 112], 4),
    box(122, 70, 60, 36, WOOD),
    box(244, 76, 50, 30, WOOD),
    dot([152, 88]),
    dot([269, 91]),
    dashed([230, 60], [230, 190]),
    dashed([152, 40], [152, 112]),
    dashed([269, 60], [269, 112]),
    dimension([152, 46], [230, 46], "position +"),
    dimension([230, 64], [269, 64], ""),
    name([252, 54], "position −", "start"),
    dimension([24, 178], [230, 178], "hitch", "below"),
    label([234, 160], "axle", "start"),
    arrow([24, 164], [24, 120]),
    label([30, 150], "share on the hitch", "start"),
  ],
};

function arcOf(centre: Point, r: number, from: number, to: number): string {
  const [start, end] = [moved(centre, degrees(from), r), moved(centre, degrees(to), r)];
  return `M${n(start[0])} ${n(start[1])}A${r} ${r} 0 0 0 ${n(end[0])} ${n(end[1])}`;
}
