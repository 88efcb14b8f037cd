/*
 * The few marks an end view is made of, as SVG text. Sizes are in the drawing's units, rounded to hundredths so that
 * the same plan is always the same bytes.
 */

const INK = "#000";
/** Light enough to read black figures on, dark enough to stand off white paper. */
const WOOD = "#e4e4e4";

export type Dash = "solid" | "dashed" | "dotted" | "dash-dot";
const DASHES: Readonly<Record<Dash, string>> = {
  solid: "",
  dashed: ' stroke-dasharray="8 5"',
  dotted: ' stroke-dasharray="2 4"',
  "dash-dot": ' stroke-dasharray="12 4 2 4"',
};

export function line(x1: number, y1: number, x2: number, y2: number, dash: Dash = "solid", thick = 1): string {
  const ends = `x1="${round(x1)}" y1="${round(y1)}" x2="${round(x2)}" y2="${round(y2)}"`;
  return `<line ${ends} stroke="${INK}" stroke-width="${thick}"${DASHES[dash]}/>`;
}

export function ellipse(x: number, y: number, rx: number, ry: number, dash: Dash): string {
  const size = `cx="${round(x)}" cy="${round(y)}" rx="${round(rx)}" ry="${round(ry)}"`;
  return `<ellipse ${size} fill="none" stroke="${INK}" stroke-width="1.5"${DASHES[dash]}/>`;
}

export function piece(x: number, y: number, width: number, height: number): string {
  const size = `x="${round(x)}" y="${round(y)}" width="${round(width)}" height="${round(height)}"`;
  return `<rect ${size} fill="${WOOD}" stroke="${INK}" stroke-width="1"/>`;
}

export type Anchor = "start" | "middle" | "end";

/** Text whose middle height is at y. */
export function words(
  x: number,
  y: number,
  text: string,
  size: number,
  anchor: Anchor = "start",
  turned = false,
): string {
  const turn = turned ? ` transform="rotate(-90 ${round(x)} ${round(y)})"` : "";
  const at = `x="${round(x)}" y="${round(y)}" dy="0.35em"`;
  return `<text ${at} font-size="${round(size)}" text-anchor="${anchor}"${turn}>${escaped(text)}</text>`;
}

export function escaped(text: string): string {
  return text.replace(/&/g, "&amp;").replace(/</g, "&lt;").replace(/>/g, "&gt;");
}

export function round(size: number): string {
  return String(Math.round(size * 100) / 100 + 0);
}

/** About how wide text of a plain face is. */
export function widthOf(text: string, size: number): number {
  return text.length * size * 0.56;
}
