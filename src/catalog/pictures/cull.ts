import {
  box,
  circle,
  curve,
  DARK,
  dashed,
  degrees,
  dimension,
  label,
  moved,
  n,
  name,
  oval,
  WOOD,
  type Part,
  type Picture,
} from "../../functions/drawing/marks";

export const cullBox: Picture = {
  title: "A defect boxed in the end of a log",
  desc: "Left, the end of a log with a dark defect; a dashed box stands round it, as wide and high as the defect and an inch more. Right, the log from the side with the length the defect runs.",
  height: 180,
  parts: [
    circle([85, 85], 62, WOOD),
    curve("M62 84q6 -18 26 -15q20 2 18 16q-3 16 -22 14q-24 0 -22 -15Z", DARK),
    dashed([54, 61], [114, 61], [114, 108], [54, 108], [54, 61]),
    dimension([62, 170], [106, 170], "width", "above"),
    dimension([153, 69], [153, 100], "height"),
    fromTheSide(),
    box(219, 69, 80, 31, DARK),
    dimension([219, 170], [299, 170], "length", "above"),
  ],
};

export const cullSector: Picture = {
  title: "A defect that a pie-cut holds",
  desc: "Left, the end of a log with a dark wedge from the middle to the bark, a share of the circle. Right, the log from the side with the length the defect runs.",
  height: 180,
  parts: [
    circle([85, 85], 62, WOOD),
    wedge(-115, -25),
    name([85, 172], "share of the circle"),
    fromTheSide(),
    box(219, 47, 70, 30, DARK),
    dimension([219, 163], [289, 163], "defectlength", "above"),
  ],
};

export const cullRing: Picture = {
  title: "Rotten sapwood round a sound core, and a rotten heart",
  desc: "Two ends of logs. Left the sapwood is rotten: outer is the whole log, core the sound wood inside. Right the heart is rotten: outer is the diameter of the rot, and no core is given.",
  height: 195,
  parts: [
    circle([85, 80], 62, DARK),
    `<circle cx="85" cy="80" r="42" fill="var(--paper)"/>`,
    circle([85, 80], 42, WOOD),
    dimension([43, 80], [127, 80], "core"),
    dimension([23, 165], [147, 165], "outer", "above"),
    label([85, 188], "rotten sapwood"),
    circle([255, 80], 62, WOOD),
    circle([255, 80], 34, DARK),
    dimension([221, 165], [289, 165], "outer", "above"),
    label([255, 188], "rotten heart"),
  ],
};

function fromTheSide(): Part[] {
  return [curve("M219 47H325V123H219", WOOD), oval([219, 85], 8, 38, WOOD)];
}

function wedge(from: number, to: number): string {
  const [start, end] = [moved([85, 85], degrees(from), 62), moved([85, 85], degrees(to), 62)];
  return curve(`M85 85L${n(start[0])} ${n(start[1])}A62 62 0 0 1 ${n(end[0])} ${n(end[1])}Z`, DARK);
}
