import {
  circle,
  curve,
  dashed,
  dimension,
  hair,
  label,
  n,
  name,
  oval,
  WOOD,
  type Part,
  type Picture,
} from "../../functions/drawing/marks";

/** The log of these pictures lies with its small end to the left. */
const LOG = { left: 62, right: 278, middle: 68, small: 26, large: 40, bark: 5 };

export const log: Picture = {
  title: "Where a log is measured",
  desc: "A log from the side. The small, middle and large diameters are taken inside the bark; the length runs from end face to end face.",
  height: 166,
  parts: [logFromTheSide(), diameters(), dimension([LOG.left, 136], [LOG.right, 136], "length", "below")],
};

export const logTrim: Picture = {
  title: "Diameter, length and trim",
  desc: "A log from the side. The diameter is the small end's, inside the bark. The length that counts ends before the trim, the few inches over at the end.",
  height: 166,
  parts: [
    logFromTheSide(),
    smallEnd("diameter"),
    dashed([LOG.right - 24, 26], [LOG.right - 24, 144]),
    dimension([LOG.left, 136], [LOG.right - 24, 136], "length that counts", "below"),
    dimension([LOG.right - 24, 136], [LOG.right, 136], "trim", "below"),
  ],
};

export const taper: Picture = {
  title: "Taper: the diameter grows evenly along the log",
  desc: "A log from the side with straight edges. At a distance from the small end its diameter is the small end's and a share of the growth to the large end.",
  height: 166,
  parts: [
    logFromTheSide(),
    smallEnd("small"),
    largeEnd("large"),
    dashed([160, 21], [160, 144]),
    dimension([160, halfAt(160, -1)], [160, halfAt(160, 1)], "answer"),
    dimension([LOG.left, 128], [160, 128], "distance", "below"),
    dimension([LOG.left, 152], [LOG.right, 152], ""),
    name([225, 147], "length"),
  ],
};

export const sweep: Picture = {
  title: "Sweep: the gap under a string along the hollow side",
  desc: "A bowed log from the side with a string stretched from end to end along its hollow side. The sweep is the widest gap between string and log.",
  height: 165,
  parts: [
    curve(`M40 62Q170 4 300 48L300 128Q170 78 40 126Z`, WOOD),
    oval([40, 94], 9, 32, WOOD),
    dashed([40, 126], [300, 128]),
    dimension([172, 103], [172, 127], "sweep"),
    label([60, 145], "string", "start"),
  ],
};

export const twoDiameters: Picture = {
  title: "Two readings across one end, inside the bark",
  desc: "The end of a log, a little oval, with its bark. One diameter is read across its longest way, the other across its shortest, both inside the bark.",
  height: 180,
  parts: [
    oval([150, 90], 84, 72),
    oval([150, 90], 77, 65, WOOD),
    dimension([73, 90], [227, 90], ""),
    label([192, 84], "longest"),
    dimension([150, 25], [150, 155], ""),
    label([157, 54], "shortest", "start"),
    hair([222, 48], [250, 34]),
    label([253, 36], "bark", "start"),
  ],
};

export const girth: Picture = {
  title: "A tape round the log, and the bark under it",
  desc: "The end of a log. The tape goes round outside the bark. The bark's thickness is taken on one side. The diameter inside the bark is what is left.",
  height: 180,
  parts: [
    `<circle cx="130" cy="90" r="78" stroke-width="3.5"/>`,
    circle([130, 90], 75),
    circle([130, 90], 62, WOOD),
    dimension([68, 90], [192, 90], "inside bark"),
    dimension([192, 90], [205, 90], ""),
    name([228, 94], "bark", "start"),
    `<path stroke-width="3.5" d="M130 12Q190 8 226 30"/>`,
    name([232, 38], "girth", "start"),
    label([232, 54], "by tape", "start"),
  ],
};

/** The log with its bark, seen from the side, its ends as ovals. */
export function logFromTheSide(): Part[] {
  const { left, right, middle, small, large, bark } = LOG;
  const edge = (sign: 1 | -1, over: number) =>
    `M${left} ${n(middle + sign * (small + over))}L${right} ${n(middle + sign * (large + over))}`;
  return [
    curve(edge(-1, bark)),
    curve(edge(1, bark)),
    curve(`M${right} ${middle - large - bark}A11 ${large + bark} 0 0 1 ${right} ${middle + large + bark}`),
    oval([left, middle], 8, small + bark),
    oval([left, middle], 6, small, WOOD),
  ];
}

function diameters(): Part[] {
  const x = (LOG.left + LOG.right) / 2;
  return [smallEnd("small"), largeEnd("large"), dimension([x, halfAt(x, -1)], [x, halfAt(x, 1)], "middle")];
}

function smallEnd(text: string): Part[] {
  const [top, bottom] = [LOG.middle - LOG.small, LOG.middle + LOG.small];
  return [
    hair([LOG.left, top], [44, top]),
    hair([LOG.left, bottom], [44, bottom]),
    dimension([48, top], [48, bottom], ""),
    name([4, top - 14], text, "start"),
    hair([30, top - 10], [46, top + 8]),
  ];
}

function largeEnd(text: string): Part[] {
  const [top, bottom] = [LOG.middle - LOG.large, LOG.middle + LOG.large];
  return [
    hair([LOG.right, top], [300, top]),
    hair([LOG.right, bottom], [300, bottom]),
    dimension([296, top], [296, bottom], ""),
    name([338, top - 14], text, "end"),
    hair([312, top - 10], [298, top + 8]),
  ];
}

/** Where the wood ends above (-1) or below (1) the log's middle line. */
function halfAt(x: number, sign: 1 | -1): number {
  const { left, right, middle, small, large } = LOG;
  return middle + sign * (small + ((large - small) * (x - left)) / (right - left));
}
