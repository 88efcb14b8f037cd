import type { Board } from "../../../math/sawing/cut-plan/board";
import type { Plan, View } from "../../../math/sawing/cut-plan/plan";
import { inchesText, quartersText } from "../../../math/inches-text";
import { FONT, widthOf } from "../../drawing/marks";

/** Where inches across the log and above the bed come to lie on the drawing, in one scale both ways. */
export interface Canvas {
  perIn: number;
  x(acrossIn: number): number;
  y(aboveBedIn: number): number;
  topIn: number;
  font: number;
  /** Where the labels at the right begin. */
  labelX: number;
  rulerX: number;
  width: number;
  fontInside(board: Board): number;
}

const RULER_WIDTH = 64;
const GAP = 24;
const MIN_LABEL_WIDTH = 60;

/** A view's place on the drawing, beside those before it. */
export function canvasFor(view: View, labels: readonly string[], perIn: number, leftX: number, bedY: number): Canvas {
  const reachIn = acrossReach(view);
  const rulerX = leftX + RULER_WIDTH;
  const middleX = rulerX + GAP + reachIn * perIn;
  const labelX = middleX + reachIn * perIn + GAP + (view.quarter ? 3 * FONT : 0);
  const thinnest = Math.min(...boardsOf(view).map(({ greenIn }) => greenIn), 4);
  const font = Math.min(FONT, 0.95 * thinnest * perIn);
  return {
    perIn,
    x: (acrossIn) => middleX + acrossIn * perIn,
    y: (aboveBedIn) => bedY - aboveBedIn * perIn,
    topIn: upReach(view),
    font,
    labelX,
    rulerX,
    width: labelX + Math.max(...labels.map((label) => widthOf(label, font)), MIN_LABEL_WIDTH) - leftX,
    fontInside: ({ product }) => Math.min(FONT, 0.8 * product.greenIn * perIn),
  };
}

function boardsOf(view: View) {
  return [...view.boards, ...(view.quarter?.boards ?? [])].map(({ board }) => board.product);
}

/** How far the outlines and the guides reach from the middle. */
function acrossReach({ butt, smallEnd, middle, guidesIn }: View): number {
  const bowed = middle ? middle.halfAcrossIn + Math.abs(middle.acrossIn) : 0;
  return Math.max(butt.halfAcrossIn, smallEnd.halfAcrossIn, bowed, (guidesIn ?? 0) / 2);
}

export function upReach({ butt, smallEnd, middle }: View): number {
  return Math.max(...[butt, smallEnd, middle ?? butt].map(({ pithIn, halfUpIn }) => pithIn + halfUpIn));
}

/** The boards of a flitch side by side, a rip kerf between them. */
export function boxesOf(board: Board, ripKerfIn: number): { leftIn: number; rightIn: number }[] {
  const { greenWidthsIn, middleIn } = board;
  const wideIn = greenWidthsIn.reduce((sum, width) => sum + width, 0) + (greenWidthsIn.length - 1) * ripKerfIn;
  let leftIn = middleIn - wideIn / 2;
  return greenWidthsIn.map((width) => {
    const box = { leftIn, rightIn: leftIn + width };
    leftIn += width + ripKerfIn;
    return box;
  });
}

/** The middle of the box nearest the middle of the flitch, where a figure is on no saw cut. */
export function figureAt(board: Board, ripKerfIn: number): number {
  const boxes = boxesOf(board, ripKerfIn);
  const { leftIn, rightIn } = boxes[(boxes.length - 1) >> 1]!;
  return (leftIn + rightIn) / 2;
}

/** A board's size as it is called out: thickness, widths, length. */
export function sizeText({ product, widthsIn, lengthFt }: Board): string {
  const thickness = product.isTimber ? `timber ${inchesText(product.nominalIn)}` : quartersText(product.nominalIn);
  return `${thickness} × ${widthsIn.map(inchesText).join(" + ")} × ${inchesText(lengthFt)} ft`;
}

/** Which of the plan's products a board is, from 0; a timber is none of them, and has the look after the last. */
export function productOf({ job }: Plan, { product }: Board): number {
  const { nominalIn, greenIn, isTimber } = product;
  if (isTimber) return job.products.length;
  return Math.max(
    0,
    job.products.findIndex((one) => one.nominalIn === nominalIn && one.greenIn === greenIn),
  );
}
