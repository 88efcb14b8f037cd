import { boxesOf, productOf, sizeText, type Canvas } from "./canvas";
import type { Plan, QuarterBoard, View } from "../../../math/sawing/cut-plan/plan";
import { words } from "../../drawing/marks";
import { piece, thin } from "./strokes";

/** Four quarters sawn alike about the pith; the upper right one carries the pass numbers. */
export function quarterMarks(plan: Plan, view: View, canvas: Canvas, ripKerfIn: number): string[] {
  const { offsetIn, boards } = view.quarter!;
  const pith = view.butt.pithIn;
  const reach = Math.max(view.butt.halfAcrossIn, view.butt.halfUpIn);
  const cuts = [-offsetIn, offsetIn].flatMap((off) => [
    thin([canvas.x(-reach), canvas.y(pith + off)], [canvas.x(reach), canvas.y(pith + off)]),
    thin([canvas.x(off), canvas.y(pith - reach)], [canvas.x(off), canvas.y(pith + reach)]),
  ]);
  const pieces = [1, -1].flatMap((across) =>
    [1, -1].flatMap((up) =>
      boards.flatMap((board) =>
        marksOf(board, { across, up, pith, product: productOf(plan, board.board) }, canvas, ripKerfIn),
      ),
    ),
  );
  const list = quarterLabels(view).map((label, i) =>
    words([canvas.labelX, canvas.y(canvas.topIn) + (i + 1) * canvas.font * 1.5], label, canvas.font),
  );
  const faces = [
    words([canvas.x(reach) + 4, canvas.y(pith)], "face A", canvas.font),
    words([canvas.x(0), canvas.y(pith + reach) - canvas.font], "face B", canvas.font, "middle"),
  ];
  return [...cuts, ...pieces, ...faces, ...list];
}

/** What stands beside the quarters, pass by pass. */
export function quarterLabels({ quarter }: View): string[] {
  const { boards } = quarter!;
  if (boards.length === 0) return [];
  return [
    "1, 2: through the pith",
    ...boards.map(({ board, face, pass }) => `${pass}: ${sizeText(board)}, off face ${face}`),
  ];
}

/** Face A is the level cut through the pith, and its boards lie; face B the upright one, and its boards stand. */
function marksOf(
  { board, face, pass }: QuarterBoard,
  { across, up, pith, product }: { across: number; up: number; pith: number; product: number },
  canvas: Canvas,
  ripKerfIn: number,
): string[] {
  return boxesOf(board, ripKerfIn).flatMap(({ leftIn, rightIn }) => {
    const [alongX, alongY] = face === "A" ? [across, up] : [up, across];
    const x = [leftIn * alongX, rightIn * alongX];
    const y = [board.lowIn * alongY, board.highIn * alongY];
    const [left, right, low, high] = face === "A" ? [...x, ...y] : [...y, ...x];
    const [x1, x2] = [canvas.x(Math.min(left!, right!)), canvas.x(Math.max(left!, right!))];
    const [y1, y2] = [canvas.y(pith + Math.max(low!, high!)), canvas.y(pith + Math.min(low!, high!))];
    const marks = piece(x1, y1, x2 - x1, y2 - y1, product);
    if (across < 0 || up < 0) return marks;
    return [...marks, words([(x1 + x2) / 2, (y1 + y2) / 2], String(pass), canvas.fontInside(board), "middle")];
  });
}
