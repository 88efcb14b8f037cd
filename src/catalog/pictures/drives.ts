import {
  arrow,
  circle,
  degrees,
  dimension,
  dot,
  hair,
  label,
  line,
  moved,
  n,
  name,
  curve,
  type Part,
  type Picture,
  type Point,
} from "../../functions/drawing/marks";

const DRIVER: Point = [70, 85];
const DRIVEN: Point = [240, 85];

export const pulleys: Picture = {
  title: "Driver and driven",
  desc: "A belt over two pulleys. The driver sits on the motor and turns at the rpm given; the driven pulley, here twice as large, turns half as fast.",
  height: 195,
  parts: [
    wheels(DRIVER, 30, DRIVEN, 60),
    dimension([40, 85], [100, 85], ""),
    name([70, 140], "driver"),
    label([70, 156], "rpm in"),
    dimension([180, 85], [300, 85], ""),
    name([240, 166], "driven"),
    label([240, 182], "rpm out"),
    turning(DRIVER, 40),
    turning(DRIVEN, 70),
  ],
};

export const train: Picture = {
  title: "Belt drives one after another",
  desc: "Three shafts. The motor's small pulley drives a large one; on that same shaft a second small pulley drives the last. Drivers and drivens are listed in this order.",
  height: 190,
  parts: [
    wheels([50, 80], 18, [160, 80], 40),
    wheels([160, 80], 18, [280, 80], 45),
    name([50, 120], "driver 1"),
    name([160, 140], "driven 1"),
    name([160, 156], "driver 2"),
    label([160, 172], "on one shaft"),
    name([280, 146], "driven 2"),
    label([50, 40], "rpm"),
    arrow([34, 54], [66, 54]),
  ],
};

export const drive: Picture = {
  title: "From the motor to the band",
  desc: "A belt from the driver on the motor to the driven pulley on the shaft of the band wheel. The wheel carries the band, whose speed is wanted.",
  height: 200,
  parts: [
    wheels([60, 110], 18, [190, 100], 34),
    circle([190, 100], 78),
    `<path stroke-width="3" d="M190 22H330M190 178H330"/>`,
    `<path stroke-width="3" d="M190 22A78 78 0 0 0 190 178"/>`,
    name([60, 148], "driver"),
    label([60, 164], "motor, poles"),
    name([190, 88], "driven"),
    name([190, 158], "wheel"),
    arrow([270, 36], [325, 36]),
    name([298, 54], "speed"),
  ],
};

export const belt: Picture = {
  title: "Belt, centers and wrap",
  desc: "Two pulleys with an open belt, and below the same two with a crossed belt. Centers is the distance between the shafts. The wrap is the part of the small pulley that the belt touches.",
  height: 270,
  parts: [
    wheels([80, 75], 28, [250, 75], 56),
    dimension([80, 75], [250, 75], "centers"),
    name([80, 124], "pulley1"),
    name([250, 150], "pulley2"),
    wrap([80, 75], 28, [250, 75], 56),
    label([20, 26], "wrap", "start"),
    crossed([80, 212], 24, [250, 212], 40),
    label([165, 262], "crossed"),
  ],
};

export const band: Picture = {
  title: "Band over two wheels",
  desc: "A saw band over two wheels of the same size. Centers is the distance between the wheels' centers when the band is strained.",
  height: 160,
  parts: [
    wheels([80, 75], 52, [260, 75], 52, 3),
    dimension([80, 75], [260, 75], "centers"),
    name([80, 148], "wheel1"),
    name([260, 148], "wheel2"),
  ],
};

export const chain: Picture = {
  title: "Roller chain over two sprockets",
  desc: "A roller chain over two sprockets. Pitch is the distance from pin to pin; centers the distance between the shafts; links are counted once round.",
  height: 180,
  parts: [
    circle([80, 90], 26),
    circle([250, 90], 44),
    ...pins([80, 90], 26, [250, 90], 44).map((pin) => circle(pin, 3)),
    dot([80, 90]),
    dot([250, 90]),
    dimension([80, 90], [250, 90], "centers"),
    name([80, 138], "teeth1"),
    name([250, 156], "teeth2"),
    name([160, 32], "pitch"),
    hair([160, 36], [160, 52]),
  ],
};

export const rim: Picture = {
  title: "Rim speed",
  desc: "A wheel of a diameter turning at an rpm. Each turn carries the rim once round: pi times the diameter.",
  height: 175,
  parts: [
    `<circle cx="150" cy="88" r="68" stroke-width="3"/>`,
    dot([150, 88]),
    dimension([82, 88], [218, 88], "diameter", "below"),
    arrow([150, 12], [240, 12]),
    name([246, 16], "speed", "start"),
    turning([150, 88], 82),
    name([150, 70], "rpm"),
  ],
};

/** Two wheels and the open belt that touches both. */
function wheels(one: Point, r1: number, other: Point, r2: number, width = 1.5): Part[] {
  const turn = lean(one, r1, other, r2);
  const strand = (sign: 1 | -1) => line(moved(one, sign * turn, r1), moved(other, sign * turn, r2));
  return [
    circle(one, r1),
    circle(other, r2),
    dot(one),
    dot(other),
    `<g stroke-width="${width}">`,
    strand(1),
    strand(-1),
    "</g>",
  ];
}

/** Where an open belt leaves both wheels, as an angle from the line of centers. */
function lean(one: Point, r1: number, other: Point, r2: number): number {
  return Math.acos((r1 - r2) / (other[0] - one[0]));
}

function wrap(one: Point, r1: number, other: Point, r2: number): Part[] {
  const turn = lean(one, r1, other, r2);
  const [start, end] = [moved(one, turn, r1 + 8), moved(one, -turn, r1 + 8)];
  return [
    `<path stroke-width="4" stroke-opacity=".45" d="M${n(start[0])} ${n(start[1])}A${r1 + 8} ${r1 + 8} 0 0 1 ${n(end[0])} ${n(end[1])}"/>`,
    hair([36, 32], [54, 46]),
  ];
}

function crossed(one: Point, r1: number, other: Point, r2: number): Part[] {
  const turn = Math.acos((r1 + r2) / (other[0] - one[0]));
  const strand = (sign: 1 | -1) => line(moved(one, sign * turn, r1), moved(other, sign * turn + Math.PI, r2));
  return [circle(one, r1), circle(other, r2), dot(one), dot(other), strand(1), strand(-1)];
}

/** The pins of a chain, evenly along its two strands and round both sprockets. */
function pins(one: Point, r1: number, other: Point, r2: number): Point[] {
  const turn = lean(one, r1, other, r2);
  const strand = (sign: 1 | -1) => {
    const [from, to] = [moved(one, sign * turn, r1), moved(other, sign * turn, r2)];
    return Array.from({ length: 15 }, (_, i): Point => [
      from[0] + ((to[0] - from[0]) * i) / 15,
      from[1] + ((to[1] - from[1]) * i) / 15,
    ]);
  };
  const arc = (centre: Point, r: number, from: number, to: number, count: number) =>
    Array.from({ length: count + 1 }, (_, i) => moved(centre, from + ((to - from) * i) / count, r));
  return [
    ...strand(1),
    ...strand(-1),
    ...arc(one, r1, turn, 2 * Math.PI - turn, 7),
    ...arc(other, r2, -turn, turn, 14),
  ];
}

/** An arc with an arrow inside a wheel, clockwise. */
function turning(centre: Point, r: number): Part[] {
  const inner = r * 0.55;
  const [from, to] = [moved(centre, degrees(-150), inner), moved(centre, degrees(-40), inner)];
  const before = moved(centre, degrees(-52), inner);
  return [
    curve(`M${n(from[0])} ${n(from[1])}A${n(inner)} ${n(inner)} 0 0 1 ${n(to[0])} ${n(to[1])}`),
    arrow(before, to),
  ];
}
