/** How a cell of a ready sheet looks; the hosts say it in their own words. Colours are #rrggbb. */
export interface Appearance {
  bold?: boolean;
  italic?: boolean;
  size?: number;
  ink?: string;
  fill?: string;
  /** Over several lines, from the top of the cell. */
  wrap?: boolean;
  /** A little room to the left, beside a number. */
  indent?: boolean;
  edge?: string;
}

const [WARM_RED, QUIET, BARK, STRAW, EDGE] = ["#8a1c0a", "#5f5045", "#6b3a16", "#fdf8ec", "#cbbba9"];

/** One plain look: entry cells are tinted, what is computed is not, warnings are red and say so in words. */
export const LOOKS = {
  title: { bold: true, size: 16 },
  lead: { wrap: true },
  caution: { wrap: true, bold: true, ink: WARM_RED },
  status: { bold: true },
  label: { bold: true },
  note: { ink: QUIET, indent: true },
  warning: { ink: WARM_RED, indent: true },
  figure: { bold: true },
  columnNote: { ink: QUIET, size: 9, wrap: true },
  columnWarning: { ink: WARM_RED, size: 9, wrap: true },
  header: { bold: true, ink: "#ffffff", fill: BARK, wrap: true },
  entry: { fill: STRAW, edge: EDGE },
  computed: { edge: EDGE },
  spilled: {},
} as const satisfies Record<string, Appearance>;

export type Look = keyof typeof LOOKS;
