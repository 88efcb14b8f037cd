import { box, curve, line, shape, stroked, type Point } from "../../drawing/marks";

/** How the pieces of a product look: a tint for a coloured picture, lines for one in black and white. */
interface Look {
  tint: string;
  lines: readonly ("rising" | "falling" | "upright" | "level")[];
}

/** The looks of a plan's products in their order; a plan of more products begins anew. */
const LOOKS: readonly Look[] = [
  { tint: "#e9e6e0", lines: [] },
  { tint: "#f3e2bd", lines: ["rising"] },
  { tint: "#d5e6d0", lines: ["falling"] },
  { tint: "#d3e2f0", lines: ["upright"] },
  { tint: "#f0d7d3", lines: ["level"] },
  { tint: "#e3daee", lines: ["rising", "falling"] },
];

const LINES_APART = 9;
const FAINT = ` stroke-opacity="0.35"`;

/** A board or piece: wood within a thin line, in the look of its product. */
export function piece(x: number, y: number, width: number, height: number, product: number): string[] {
  return inLook(box(x, y, width, height), [x, y], [width, height], product);
}

/** A small piece that stands for all of its product in the list beside it. */
export function swatch([x, y]: Point, [width, height]: Point, product: number): string[] {
  const corners: Point[] = [
    [x, y],
    [x + width, y],
    [x + width, y + height],
    [x, y + height],
  ];
  return inLook(shape(corners), [x, y], [width, height], product);
}

function inLook(outline: string, corner: Point, size: Point, product: number): string[] {
  const { tint, lines } = LOOKS[product % LOOKS.length]!;
  const hatching = lines.map((way) => hatched(corner, size, way)).join("");
  const tinted = stroked(outline, { thick: 1 }).replace(/^<\w+/, `$& fill="${tint}"`);
  return hatching ? [tinted, stroked(curve(hatching), { thick: 0.7 }).replace(" d=", `${FAINT} d=`)] : [tinted];
}

/** Lines across a box that lie evenly apart, in the words of an SVG path. */
function hatched([x, y]: Point, [width, height]: Point, way: Look["lines"][number]): string {
  const slanted = way === "rising" || way === "falling";
  const far = slanted ? width + height : way === "upright" ? width : height;
  const lines: string[] = [];
  for (let at = LINES_APART; at < far; at += LINES_APART) {
    const [from, to]: [Point, Point] = slanted
      ? [
          [Math.min(at, width), Math.max(0, at - width)],
          [Math.max(0, at - height), Math.min(at, height)],
        ]
      : way === "upright"
        ? [
            [at, 0],
            [at, height],
          ]
        : [
            [0, at],
            [width, at],
          ];
    const across = (right: number) => (way === "falling" ? x + width - right : x + right);
    lines.push(`M${short(across(from[0]))} ${short(y + from[1])}L${short(across(to[0]))} ${short(y + to[1])}`);
  }
  return lines.join("");
}

function short(value: number): string {
  return String(Math.round(value * 10) / 10);
}

/** Rings of growth, evenly about the pith: not those of the tree, but how they lie in a board. The heart is the innermost. */
export function rings([x, y]: Point, across: number, up: number): string[] {
  return Array.from({ length: RINGS }, (_, at) => {
    const [rx, ry] = [across, up].map((half) => short((half * (at + 1)) / (RINGS + 1)));
    const ring = curve(
      `M${short(x - Number(rx))} ${short(y)}a${rx} ${ry} 0 1 0 ${2 * Number(rx)} 0a${rx} ${ry} 0 1 0 ${-2 * Number(rx)} 0`,
    );
    return stroked(ring, { thick: at === 0 ? 1.5 : 0.8 }).replace(
      " d=",
      ` stroke-opacity="${at === 0 ? 0.4 : 0.16}" d=`,
    );
  });
}

const RINGS = 9;

/** A line thinner than the outlines of the log, in dashes where they are given. */
export function thin(from: Point, to: Point, dashes?: string): string {
  return stroked(line(from, to), { dashes, thick: 1 });
}
