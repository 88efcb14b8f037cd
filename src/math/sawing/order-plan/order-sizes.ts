import { mustBeAtLeast } from "../../errors";
import { inchesText } from "../../inches-text";
import { sumOf } from "../../numbers";
import { IN_PER_FT } from "../../units";
import type { withUsual } from "../cut-plan/cut-settings";
import { greenSizeIn } from "../cut-plan/products";
import { nearestSteps } from "../cut-plan/scale-steps";
import type { Kind, OrderLine, Piece } from "./order-job";
import { mustBeFewRuns, runsOf } from "./runs";

/** A line of the order in steps of the scale. */
export interface Size {
  tallyIn: number;
  greenSteps: number;
  widthSteps: number;
  cutIn: number;
  boardFeet: number;
}

/** The size of a line, green and with its trim. */
export function sizeOf(line: OrderLine, settings: ReturnType<typeof withUsual>): Size {
  const stepIn = settings["scale step"];
  const tallyIn = Math.max(1, line.thickness);
  const widthSteps = nearestSteps(line.width + settings["width allowance"], stepIn);
  const greenSteps = nearestSteps(greenSizeIn(line), stepIn);
  mustBeAtLeast(1, widthSteps, `order, width, row ${line.row}, of ${inchesText(line.width)} in, in scale steps`);
  mustBeAtLeast(1, greenSteps, `order, thickness, row ${line.row}, in scale steps`);
  return {
    tallyIn,
    greenSteps,
    widthSteps,
    cutIn: IN_PER_FT * line.length + settings.trim,
    boardFeet: (tallyIn * line.width * line.length) / IN_PER_FT,
  };
}

/** Kinds and pieces: lines of one size are one piece, but stock and order are kept apart. */
export function kindsOf(
  order: readonly OrderLine[],
  lines: readonly number[],
  sizes: readonly Size[],
  crosscutIn: number,
  longestIn: number,
) {
  const places = new Map<string, { lines: number[]; kind: string }>();
  for (const at of lines) {
    const size = sizes[at]!;
    const kind = `${size.greenSteps} ${size.tallyIn}`;
    const key = `${kind} ${size.widthSteps} ${order[at]!.width} ${size.cutIn} ${order[at]!.count === "stock"}`;
    places.set(key, { kind, lines: [...(places.get(key)?.lines ?? []), at] });
  }
  const groups = [...places.values()];
  const names = [...new Set(groups.map(({ kind }) => kind))];
  const widthsOf = (kind: string) =>
    [...new Set(groups.filter((group) => group.kind === kind).map(({ lines }) => sizes[lines[0]!]!.widthSteps))].sort(
      (a, b) => a - b,
    );
  const pieces = groups.map(({ kind, lines }): Piece => {
    const { widthSteps, cutIn, boardFeet } = sizes[lines[0]!]!;
    const counts = lines.map((at) => order[at]!.count);
    const count = counts[0] === "stock" ? Infinity : sumOf(counts as number[], (one) => one);
    const width = widthsOf(kind).indexOf(widthSteps);
    return { kind: names.indexOf(kind), widthSteps, width, cutIn, boardFeet, count, lines };
  });
  const kinds = names.map((name): Kind & { of: number } => {
    const ofKind = groups.flatMap(({ kind }, piece) => (kind === name ? [piece] : []));
    const { greenSteps, tallyIn } = sizes[groups[ofKind[0]!]!.lines[0]!]!;
    const runsIn = runsOf(
      ofKind.map((piece) => pieces[piece]!.cutIn),
      crosscutIn,
      longestIn,
    );
    return { greenSteps, tallyIn, pieces: ofKind, widths: widthsOf(name), runsIn, of: groups[ofKind[0]!]!.lines[0]! };
  });
  mustBeFewRuns(sumOf(kinds, ({ runsIn }) => runsIn.length));
  return { pieces, kinds };
}
