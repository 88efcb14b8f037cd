/** How a cell looks; the hosts and the sample say it in their own words. Colours are #rrggbb. */
export interface Appearance {
  bold?: boolean;
  italic?: boolean;
  underline?: boolean;
  size?: number;
  ink?: string;
  fill?: string;
  /** Over several lines, from the top of the cell. */
  wrap?: boolean;
  /** A little room to the left, beside a number. */
  indent?: boolean;
  /** A line round the cell, or only below it. */
  edge?: string;
  under?: string;
}

/** The colours of every sheet and nothing else; what they say is said in words too, for black and white. */
export const PALETTE = {
  ink: "#2b211a",
  quiet: "#5f5045",
  bark: "#6b3a16",
  straw: "#fdf8ec",
  edge: "#cbbba9",
  key: "#f3ebe0",
  red: "#8a1c0a",
  paleRed: "#fbeae5",
  link: "#1f5a87",
  white: "#ffffff",
} as const;

const { quiet, bark, straw, edge, red, paleRed, key, link, white } = PALETTE;

/** A line that runs under a heading or a figure. */
const UNDER_FIGURE = "#e6ddd2";

/** One plain look: entry cells are tinted and boxed, what is computed is not, warnings are red and say so in words. */
export const LOOKS = {
  title: { bold: true, size: 16 },
  lead: { wrap: true, ink: quiet },
  caution: { wrap: true, bold: true, ink: red, fill: paleRed },
  status: { bold: true },
  label: { bold: true },
  heading: { bold: true, size: 13, under: bark },
  text: {},
  prose: { wrap: true },
  note: { ink: quiet, size: 10, indent: true },
  warning: { ink: red, indent: true },
  figure: { bold: true, fill: key, under: UNDER_FIGURE },
  columnNote: { ink: quiet, size: 10, wrap: true },
  columnWarning: { ink: red, size: 10, wrap: true },
  header: { bold: true, ink: white, fill: bark, wrap: true },
  entry: { fill: straw, edge },
  computed: { under: UNDER_FIGURE },
  large: { bold: true, size: 18, under: UNDER_FIGURE },
  wrapped: { wrap: true, under: UNDER_FIGURE },
  spilled: {},
  link: { ink: link, underline: true },
} as const satisfies Record<string, Appearance>;

export type Look = keyof typeof LOOKS;
