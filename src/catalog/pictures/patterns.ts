import {
  box,
  circle,
  curve,
  DARK,
  dashed,
  n,
  name,
  WOOD,
  type Part,
  type Picture,
  type Point,
} from "../../functions/drawing/marks";

const RADIUS = 68;
const BOARD = 11;
const KERF = 2;

/** The cut patterns, each on the end of the same log. */
export const patterns: Picture = {
  title: "Four ways to open a log",
  desc: "Four ends of logs. Live: edged boards, all cut level through the log. Slab: the same cuts, thicker, with the live edge left on. Cant: boards off top and bottom, then the square middle cut the other way. Quarter: four quarters, boards taken from their two faces by turns.",
  height: 360,
  parts: [
    pattern([88, 84], "live", live),
    pattern([252, 84], "slab", slabs),
    pattern([88, 264], "cant", cant),
    pattern([252, 264], "quarter", quarters),
  ],
};

function pattern([x, y]: Point, word: string, boards: (at: Point) => Part[]): Part[] {
  return [circle([x, y], RADIUS), boards([x, y]), name([x, y + RADIUS + 18], word)];
}

/** Boards through and through, each edged to what its narrower face allows. */
function live([x, y]: Point): Part[] {
  return levels(BOARD).map((top) => edged([x, y], top, BOARD));
}

/** Slabs keep their bark edges: what lies between two level cuts. */
function slabs([x, y]: Point): Part[] {
  return levels(20).map((top) => {
    const [upper, lower] = [half(top), half(top + 20)];
    const sweep = (from: number, to: number) => `A${RADIUS} ${RADIUS} 0 0 1 ${n(from)} ${n(to)}`;
    return curve(
      `M${n(x - upper)} ${n(y + top)}H${n(x + upper)}${sweep(x + lower, y + top + 20)}H${n(x - lower)}${sweep(x - upper, y + top)}Z`,
      WOOD,
    );
  });
}

/** A middle cut crosswise, with jacket boards above and below. */
function cant([x, y]: Point): Part[] {
  const side = 74;
  const boards = Array.from({ length: 6 }, (_, i) => -side / 2 + i * (BOARD + KERF - 0.4));
  const jacket = [side / 2 + KERF, side / 2 + 2 * KERF + BOARD];
  return [
    ...boards.map((left) => box(x + left, y - side / 2, BOARD, side, DARK)),
    ...jacket
      .filter((top) => half(top + BOARD) > 10)
      .flatMap((top) => [edged([x, y], top, BOARD), edged([x, y], -top - BOARD, BOARD)]),
  ];
}

/** Boards from the two faces of each quarter by turns, out to the bark. */
function quarters([x, y]: Point): Part[] {
  return [
    ...[0, 90, 180, 270].map((turn) => `<g transform="rotate(${turn} ${x} ${y})">${quarter([x, y]).join("")}</g>`),
    dashed([x - RADIUS, y], [x + RADIUS, y]),
    dashed([x, y - RADIUS], [x, y + RADIUS]),
  ];
}

function quarter([x, y]: Point): string[] {
  const boards: string[] = [];
  let [across, up] = [KERF, KERF];
  for (let i = 0; i < 6; i++) {
    const level = i % 2 === 0;
    const near = Math.max(level ? across : up, (level ? up : across) + BOARD);
    const far = half((level ? up : across) + BOARD);
    if (far - near < 12) break;
    boards.push(
      level ? box(x + near, y + up, far - near, BOARD, WOOD) : box(x + across, y + near, BOARD, far - near, WOOD),
    );
    if (level) up += BOARD + KERF;
    else across += BOARD + KERF;
  }
  return boards;
}

/** A board between two level cuts, as wide as the log is at the worse of its faces. */
function edged([x, y]: Point, top: number, thickness: number): string {
  const width = Math.min(half(top), half(top + thickness));
  return box(x - width, y + top, 2 * width, thickness, WOOD);
}

/** Upper faces of the pieces, evenly about the pith, while they leave something to saw. */
function levels(thickness: number): number[] {
  const step = thickness + KERF;
  const count = Math.floor((2 * (RADIUS - 6) + KERF) / step);
  const first = -(count * step - KERF) / 2;
  return Array.from({ length: count }, (_, i) => first + i * step);
}

/** Half the width of the log at a height from its pith. */
function half(height: number): number {
  return Math.sqrt(Math.max(0, RADIUS ** 2 - height ** 2));
}
