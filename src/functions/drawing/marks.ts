import { escaped } from "../../xlsx/escaped";

/*
 * The drawing kit, as SVG text: plain lines in the ink of what stands around them, so that a picture follows a page into
 * the dark. Coordinates run right and down. The same picture is always the same bytes.
 */

/** A picture of a reference page. All are as wide; heights differ. */
export interface Picture {
  title: string;
  /** What a reader who cannot see the picture should know of it. */
  desc: string;
  height: number;
  parts: readonly Part[];
}

export type Part = string | readonly Part[];
export type Point = readonly [x: number, y: number];
export type Anchor = "start" | "middle" | "end";

export const WIDTH = 340;

/** Length of an arrowhead. */
const HEAD = 7;
/** Under this a dimension's arrows stand outside and point at the gap. */
const NARROW = 20;
/** How large words are where nothing else is said. */
export const FONT = 13;
/** Letters are filled, not drawn round. */
const LETTERS = `<text fill="currentColor" stroke="none"`;

/** How dark a shaded shape is; wood is lighter than what matters in it. */
export const WOOD = 0.1;
export const DARK = 0.3;

export function line(from: Point, ...to: readonly Point[]): string {
  return `<path d="${path(from, ...to)}"/>`;
}

export function dashed(from: Point, ...to: readonly Point[]): string {
  return stroked(line(from, ...to), { dashes: "4 3", thick: 1 });
}

/** A line that only leads from a thing to its dimension. */
export function hair(from: Point, to: Point): string {
  return stroked(line(from, to), { thick: 0.7 });
}

/** A mark with a line of its own: in dashes, or of another thickness than the picture's. */
export function stroked(mark: string, { dashes, thick }: { dashes?: string; thick?: number }): string {
  const dash = dashes ? ` stroke-dasharray="${dashes}"` : "";
  const width = thick === undefined ? "" : ` stroke-width="${thick}"`;
  return mark.replace(/^<\w+/, `$&${dash}${width}`);
}

export function shape(points: readonly Point[], shade = 0): string {
  return `<path${filled(shade)} d="${path(...(points as [Point, ...Point[]]))}Z"/>`;
}

export function box(x: number, y: number, width: number, height: number, shade = 0): string {
  return `<rect${filled(shade)} x="${n(x)}" y="${n(y)}" width="${n(width)}" height="${n(height)}"/>`;
}

export function circle([x, y]: Point, r: number, shade = 0): string {
  return `<circle${filled(shade)} cx="${n(x)}" cy="${n(y)}" r="${n(r)}"/>`;
}

export function oval([x, y]: Point, rx: number, ry: number, shade = 0): string {
  return `<ellipse${filled(shade)} cx="${n(x)}" cy="${n(y)}" rx="${n(rx)}" ry="${n(ry)}"/>`;
}

export function dot([x, y]: Point, r = 2.5): string {
  return `<circle fill="currentColor" stroke="none" cx="${n(x)}" cy="${n(y)}" r="${r}"/>`;
}

/** Any curve, in the words of an SVG path. */
export function curve(d: string, shade = 0): string {
  return `<path${filled(shade)} d="${d}"/>`;
}

/** A word beside a thing; the point is at the foot of its letters. */
export function label([x, y]: Point, text: string, anchor: Anchor = "middle"): string {
  return `${LETTERS} font-size="${FONT}" x="${n(x)}" y="${n(y)}" text-anchor="${anchor}">${escaped(text)}</text>`;
}

/** The name of an argument, or of the answer: what the page's list calls so. */
export function name([x, y]: Point, text: string, anchor: Anchor = "middle"): string {
  return label([x, y], text, anchor).replace(" x=", ` font-weight="600" x=`);
}

/** Words of any size; the point is at half the height of the letters. */
export function words([x, y]: Point, text: string, size = FONT, anchor: Anchor = "start"): string {
  const at = `x="${n(x)}" y="${n(y)}" dy="0.35em"`;
  return `${LETTERS} font-size="${n(size)}" ${at} text-anchor="${anchor}">${escaped(text)}</text>`;
}

/** About how wide words of a plain face are. */
export function widthOf(text: string, size: number): number {
  return text.length * size * 0.56;
}

export function arrow(from: Point, to: Point): string[] {
  return [line(from, to), head(to, angle(from, to))];
}

/** A distance with an arrow at both ends, and its name above a level line, beside a plumb one. */
export function dimension(
  from: Point,
  to: Point,
  text: string,
  side: "above" | "below" | "left" | "right" = usual(from, to),
): Part[] {
  const middle: Point = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
  const along = angle(from, to);
  const narrow = Math.hypot(to[0] - from[0], to[1] - from[1]) < NARROW;
  const outside = (point: Point, away: number) => arrow(moved(point, away, 16), point);
  const arrows = narrow
    ? [outside(from, along + Math.PI), outside(to, along)]
    : [line(from, to), head(to, along), head(from, along + Math.PI)];
  return [`<g stroke-width="1">`, ...arrows, `</g>`, text && name(beside(middle, side), text, ANCHORS[side])];
}

/** Where a point comes to that goes so far at an angle. */
export function moved([x, y]: Point, at: number, far: number): Point {
  return [x + far * Math.cos(at), y + far * Math.sin(at)];
}

export function degrees(of: number): number {
  return (of * Math.PI) / 180;
}

/** A number as short as a drawing needs, the same on every machine. */
export function n(value: number): string {
  return String(Math.round(value * 100) / 100 + 0);
}

/** A picture as SVG, complete in itself. */
export function svg(id: string, { title, desc, height, parts }: Picture): string {
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${WIDTH} ${height}" role="img" aria-labelledby="${id}-title ${id}-desc">`,
    `<title id="${id}-title">${title}</title>`,
    `<desc id="${id}-desc">${desc}</desc>`,
    PEN,
    ...flat(parts).filter(Boolean),
    `</g>`,
    `</svg>`,
  ].join("\n");
}

/** Marks on a paper of their own, for a place that lends them no ink: black on white. */
export function onPaper(marks: readonly string[], width: number, height: number): string[] {
  const inked = [PEN, ...marks, "</g>"].map((mark) => mark.replaceAll("currentColor", "#000"));
  return [`<rect width="${n(width)}" height="${n(height)}" fill="#fff"/>`, ...inked];
}

function flat(part: Part): string[] {
  return typeof part === "string" ? [part] : part.flatMap(flat);
}

const PEN = `<g fill="none" stroke="currentColor" stroke-width="1.5" stroke-linejoin="round" stroke-linecap="round">`;

const ANCHORS = { above: "middle", below: "middle", left: "end", right: "start" } as const;

function usual(from: Point, to: Point): "above" | "right" {
  return Math.abs(to[0] - from[0]) >= Math.abs(to[1] - from[1]) ? "above" : "right";
}

function beside([x, y]: Point, side: keyof typeof ANCHORS): Point {
  return { above: [x, y - 6], below: [x, y + 15], left: [x - 7, y + 4], right: [x + 7, y + 4] }[
    side
  ] as unknown as Point;
}

function head(tip: Point, at: number): string {
  const wing = (turn: number) => moved(tip, at + Math.PI + turn, HEAD);
  return `<path fill="currentColor" stroke="none" d="${path(tip, wing(0.35), wing(-0.35))}Z"/>`;
}

function angle(from: Point, to: Point): number {
  return Math.atan2(to[1] - from[1], to[0] - from[0]);
}

function filled(shade: number): string {
  return shade > 0 ? ` fill="currentColor" fill-opacity="${shade}"` : "";
}

function path(...points: readonly Point[]): string {
  return points.map(([x, y], i) => `${i === 0 ? "M" : "L"}${n(x)} ${n(y)}`).join("");
}
