import {
  box,
  circle,
  dashed,
  DARK,
  dimension,
  hair,
  label,
  line,
  name,
  shape,
  WOOD,
  type Part,
  type Picture,
} from "../../functions/drawing/marks";

export const kerf: Picture = {
  title: "Kerf: the slot that the saw turns into dust",
  desc: "The ends of three boards sawn from one depth of wood. Between them stand two kerfs; the last board needs none under it.",
  height: 175,
  parts: [
    ...[0, 1, 2].map((i) => box(90, 20 + i * 46, 150, 34, WOOD)),
    ...[0, 1].map((i) => box(90, 54 + i * 46, 150, 12, DARK)),
    dimension([255, 20], [255, 54], "thickness"),
    dimension([255, 100], [255, 112], ""),
    name([266, 110], "kerf", "start"),
    dimension([75, 20], [75, 146], "depth", "left"),
    label([165, 166], "kerf drawn too wide"),
  ],
};

export const target: Picture = {
  title: "From the finished size to the size to saw",
  desc: "A bar of four parts: the finished size, then what planing takes, then what drying takes, then room for the saw's variation. Together they are the green size to set.",
  height: 160,
  parts: [
    box(20, 50, 150, 34, DARK),
    box(170, 50, 45, 34, WOOD),
    box(215, 50, 60, 34, WOOD),
    box(275, 50, 45, 34),
    name([95, 72], "finished"),
    name([192, 42], "planing"),
    name([245, 28], "shrinkage"),
    hair([245, 32], [245, 50]),
    name([320, 42], "variation", "end"),
    dimension([20, 106], [275, 106], "critical size", "below"),
    dimension([20, 138], [320, 138], "answer: green size to set", "below"),
  ],
};

export const readings: Picture = {
  title: "Thickness readings along both edges",
  desc: "Three boards from above, each with three readings along one edge and three along the other. Every board is one row of the range.",
  height: 175,
  parts: [0, 1, 2].map((i) => [
    box(80, 14 + i * 50, 240, 36, WOOD),
    ...[110, 200, 290].flatMap((x) => [tick(x, 14 + i * 50), tick(x, 50 + i * 50)]),
    label([70, 36 + i * 50], `row ${i + 1}`, "end"),
  ]),
};

/** Blade heights of the drawn log, in its own picture's units above the bed. */
const FACES = [128, 106, 84, 62];
const BED = 170;

export const heads: Picture = {
  title: "Blade heights above the bed",
  desc: "The end of a log on the bed with the saw's cuts as level lines. The first cut takes the top slab. Each later cut is a board and a kerf lower. The height is read at the blade's lower side.",
  height: 195,
  parts: [
    circle([130, BED - 75], 75, WOOD),
    line([20, BED], [320, BED]),
    label([24, BED + 16], "0", "start"),
    ...FACES.map((height) => line([40, BED - height], [230, BED - height])),
    dimension([30, BED - FACES[0]!], [30, BED], ""),
    name([24, BED - FACES[0]! - 8], "start", "start"),
    dimension([222, BED - FACES[0]!], [222, BED - FACES[1]!], ""),
    name([240, BED - FACES[0]! + 7], "thickness", "start"),
    label([240, BED - FACES[0]! + 23], "and kerf", "start"),
    dimension([250, BED - 24], [250, BED], ""),
    name([258, BED - 12], "bed", "start"),
    label([320, BED + 16], "the lowest the blade may go", "end"),
    dashed([150, BED - 24], [256, BED - 24]),
  ],
};

export const chord: Picture = {
  title: "The width a flat cut opens",
  desc: "The end of a round log with a level cut at a depth below its top. The answer is how wide the cut is there.",
  height: 180,
  parts: [
    circle([160, 92], 78, WOOD),
    dimension([97.6, 45.2], [222.4, 45.2], ""),
    name([160, 62], "answer"),
    hair([160, 14], [260, 14]),
    hair([222, 45.2], [260, 45.2]),
    dimension([254, 14], [254, 45.2], "depth"),
    dimension([82, 120], [238, 120], ""),
    dashed([82, 92], [82, 120]),
    dashed([238, 92], [238, 120]),
    name([160, 114], "diameter"),
  ],
};

export const throat: Picture = {
  title: "The mill's opening round the log",
  desc: "A log between the posts and under the beam of a mill. The throat is the clear opening, measured between the posts and under the beam, the smaller of the two. Clearance is the room to keep, both sides together.",
  height: 200,
  parts: [
    shape(
      [
        [40, 185],
        [40, 20],
        [300, 20],
        [300, 185],
        [282, 185],
        [282, 38],
        [58, 38],
        [58, 185],
      ],
      WOOD,
    ),
    line([20, 185], [320, 185]),
    circle([170, 123], 62, WOOD),
    dimension([58, 56], [282, 56], "throat"),
    dimension([108, 123], [232, 123], ""),
    label([170, 116], "the log as it turns"),
    dimension([232, 123], [282, 123], ""),
    dimension([58, 123], [108, 123], ""),
    hair([83, 127], [83, 142]),
    hair([257, 127], [257, 142]),
    label([83, 156], "room"),
    label([257, 156], "room"),
  ],
};

function tick(x: number, y: number): Part[] {
  return [line([x, y - 6], [x, y + 6])];
}
