import {
  arrow,
  box,
  circle,
  curve,
  DARK,
  dashed,
  dimension,
  dot,
  label,
  line,
  name,
  shape,
  WOOD,
  type Part,
  type Picture,
  type Point,
} from "../../functions/drawing/marks";

export const screw: Picture = {
  title: "Pitch, lead and diameter of a lift screw",
  desc: "Two screws. Left one thread winds round: a turn lifts the nut by one pitch. Right two threads wind side by side: a turn lifts it by the lead, two pitches.",
  height: 205,
  parts: [
    thread(50, 1),
    thread(200, 2),
    dimension([50, 180], [110, 180], "diameter", "below"),
    dimension([122, 62], [122, 86], "pitch"),
    label([80, 22], "1 start"),
    label([230, 22], "2 starts"),
    dimension([272, 62], [272, 86], "pitch"),
    dimension([328, 62], [328, 110], ""),
    name([338, 128], "lead", "end"),
  ],
};

export const strain: Picture = {
  title: "Strain: the pull on the wheel, shared by both strands",
  desc: "A band over a wheel. The strain pulls the wheel away; each of the two strands carries half. Below, the section of the band: its width counts behind the gullets.",
  height: 225,
  parts: [
    circle([220, 72], 52),
    dot([220, 72]),
    `<path stroke-width="3" d="M40 20H220A52 52 0 0 1 220 124H40"/>`,
    arrow([220, 72], [325, 72]),
    name([300, 64], "strain"),
    arrow([90, 32], [44, 32]),
    label([96, 37], "half", "start"),
    arrow([90, 112], [44, 112]),
    label([96, 117], "half", "start"),
    curve("M60 168H240L252 176L240 184H60Z", DARK),
    dimension([60, 200], [226, 200], "width behind the gullets", "below"),
    dashed([226, 160], [226, 206]),
    dimension([48, 168], [48, 184], ""),
    name([4, 148], "thickness", "start"),
  ],
};

export const stretch: Picture = {
  title: "How far a gauge length of band stretches",
  desc: "A strip of band with a gauge clamped on it, slack above and strained below. The gauge length has grown by the answer.",
  height: 165,
  parts: [
    box(20, 34, 300, 20, WOOD),
    box(20, 110, 300, 20, WOOD),
    line([90, 28], [90, 60]),
    line([230, 28], [230, 60]),
    dimension([90, 76], [230, 76], "gauge", "below"),
    line([90, 104], [90, 136]),
    line([242, 104], [242, 136]),
    dashed([230, 60], [230, 150]),
    dimension([230, 150], [242, 150], ""),
    name([264, 155], "answer", "start"),
    label([20, 26], "slack", "start"),
    label([20, 102], "strained", "start"),
  ],
};

export const bending: Picture = {
  title: "A band bent round its wheel",
  desc: "A band lying round part of a wheel. Its outer face is stretched, its inner face pressed together; the thicker the band and the smaller the wheel, the more.",
  height: 175,
  parts: [
    curve("M20 170A150 150 0 0 1 320 170L336 170A166 166 0 0 0 4 170Z", DARK),
    label([170, 82], "stretched outside,"),
    label([170, 98], "pressed inside"),
    dimension([52.6, 32.6], [63.9, 43.9], ""),
    name([10, 18], "thickness", "start"),
    dimension([20, 164], [320, 164], "wheel"),
  ],
};

export const ram: Picture = {
  title: "Bore and rod of a ram",
  desc: "A hydraulic ram cut open. Oil behind the piston works on the whole bore; oil on the rod's side works on the bore less the rod.",
  height: 160,
  parts: [
    shape([
      [40, 40],
      [230, 40],
      [230, 120],
      [40, 120],
    ]),
    box(130, 42, 22, 76, DARK),
    box(152, 66, 150, 28, WOOD),
    dimension([24, 40], [24, 120], ""),
    name([10, 30], "bore", "start"),
    dimension([270, 66], [270, 94], ""),
    name([270, 112], "rod"),
    name([84, 72], "pressure"),
    arrow([60, 88], [128, 88]),
    label([192, 58], "rod side"),
    arrow([306, 80], [336, 80]),
    name([338, 56], "force", "end"),
  ],
};

export const tube: Picture = {
  title: "A steel tube, its section and its sag",
  desc: "Left, the section of a tube: height, width and wall. Right, the tube between two supports with a load at the middle; the sag is how far the middle sinks.",
  height: 190,
  parts: [
    box(40, 40, 70, 100, DARK),
    `<rect x="50" y="50" width="50" height="80" fill="var(--paper)"/>`,
    dimension([26, 40], [26, 140], ""),
    name([4, 30], "height", "start"),
    dimension([40, 156], [110, 156], "width", "below"),
    dimension([100, 90], [110, 90], ""),
    name([122, 112], "wall", "start"),
    dashed([170, 80], [330, 80]),
    curve("M170 80Q250 116 330 80"),
    ...[170, 330].map((x) =>
      shape([
        [x, 82],
        [x - 9, 100],
        [x + 9, 100],
      ]),
    ),
    arrow([250, 36], [250, 76]),
    name([258, 48], "load", "start"),
    dimension([250, 80], [250, 98], ""),
    name([250, 132], "sag"),
    dimension([170, 156], [330, 156], "span", "below"),
  ],
};

/** A piece of screw with so many threads: each ridge leans by its starts. */
function thread(x: number, starts: number): Part[] {
  const ridges = Array.from({ length: 5 }, (_, i) => 50 + i * 24);
  return [
    line([x + 6, 34], [x + 6, 168]),
    line([x + 54, 34], [x + 54, 168]),
    ...ridges.map((y, i) => {
      const drop = 12 * starts;
      const points: Point[] = [
        [x, y],
        [x + 60, y - drop],
        [x + 60, y - drop + 12],
        [x, y + 12],
      ];
      return shape(points, starts === 2 && i % 2 === 1 ? WOOD : DARK);
    }),
  ];
}
