import { sum, sumOf } from "../../numbers";
import { IN_PER_FT } from "../../units";
import { bestWhereShorterIsWider, perInchOf } from "./best-length";
import { boardOf, type Board } from "./board";
import { halfUpAt, type CutJob, type Product } from "./cut-job";
import { mustQuarterBetweenGuides } from "./guides";
import { viewOfLog } from "./live";
import type { Pass, QuarterBoard, Sawn, Task } from "./plan";
import { bestOrder, type QuarterWorth } from "./quarter-order";
import { stepsWithin } from "./scale-steps";
import { widthMenus } from "./width-menu";

/** A log has four quarters, sawn alike. */
const QUARTERS = 4;

/**
 * Quarter sawing: two cuts through the pith, then boards off either flat face of a quarter in turn, each trimmed
 * towards the pith until the rings meet its face at the angle asked for or steeper.
 *
 * @formula by dynamic program: F(i, j) is the greatest of 0, V + F(i, j + t + k) and V + F(i + t + k, j) over the
 *   products, and the total is 4 * F(0, 0)
 * @source plain geometry: rings as circles about the pith, ring angle = atan(x / y) at the board's worst point
 */
export function sawQuarters(job: CutJob): Sawn {
  mustQuarterBetweenGuides(job);
  const offsetIn = Math.max(job.kerfIn, job.heartIn) / 2;
  const halving = pithCuts(job, offsetIn);
  const quarter = quarterOf(job, offsetIn);
  const order = bestOrder(job, quarter);
  const boards = order.map(({ face, product, along, off }, n): QuarterBoard => ({
    board: quarter.board(product, along, off),
    face,
    pass: n + halving.length + 1,
  }));
  const passes = boards.length > 0 ? [...halving, ...boards.map(passOf)] : [];
  return {
    total: QUARTERS * sumOf(boards, ({ board }) => board.value),
    boardFeet: QUARTERS * sumOf(boards, ({ board }) => board.boardFeet),
    passes,
    views: [{ ...viewOfLog({ ...job, lies: "split" }), boards: [], quarter: { offsetIn, boards } }],
  };
}

/**
 * The cuts that make quarters: one through the pith, and one through each half, which stands on its edge. A heart wider
 * than the kerf takes two cuts each time, over and under it. A half that has lost its share of the heart stands lower on
 * the bed, because it rests where its flat side meets the bark.
 */
function pithCuts({ log, kerfIn, heartIn }: CutJob, offsetIn: number): Pass[] {
  const pithIn = halfUpAt(log, log.lengthIn);
  if (heartIn <= kerfIn)
    return cutsAt([
      [pithIn - offsetIn, { kind: "halve" }],
      [pithIn - offsetIn, { kind: "quarter" }],
    ]);
  const onEdgeIn = Math.sqrt(Math.max(0, pithIn ** 2 - offsetIn ** 2));
  const beside = (side: "over" | "under") => ({ sizeIn: heartIn, side });
  return cutsAt([
    [pithIn + offsetIn - kerfIn, { kind: "halve", heart: beside("over") }],
    [pithIn - offsetIn, { kind: "halve", heart: beside("under") }],
    [onEdgeIn + offsetIn - kerfIn, { kind: "quarter", heart: beside("over") }],
    [onEdgeIn - offsetIn, { kind: "quarter", heart: beside("under") }],
  ]);
}

function cutsAt(cuts: [bladeHeightIn: number, task: Task][]): Pass[] {
  return cuts.map(([bladeHeightIn, task], at) => ({ number: at + 1, bladeHeightIn, copies: 1, task }));
}

/** A quarter lies on the face the board comes off, so that the blade stands at the board's thickness. */
function passOf({ board, face, pass }: QuarterBoard): Pass {
  const task: Task = { kind: "quarter board", face };
  return { number: pass, bladeHeightIn: board.product.greenIn, board, copies: QUARTERS, task };
}

/** A quarter that can also be asked for the board itself. */
interface Quarter extends QuarterWorth {
  board(product: number, along: number, off: number): Board;
}

function quarterOf(job: CutJob, offsetIn: number): Quarter {
  const { log, stepIn, lengthsFt, products, trimIn } = job;
  const menus = widthMenus(job);
  const radiusIn = Float64Array.from(lengthsFt, (l) =>
    halfUpAt(log, Math.max(0, log.lengthIn - IN_PER_FT * l - trimIn)),
  );
  const slope = Math.tan((job.ringAngleDegrees * Math.PI) / 180);

  const outerFaceIn = (product: Product, off: number) => offsetIn + off * stepIn + product.greenIn;
  const startIn = (product: Product, along: number, off: number) =>
    Math.max(offsetIn + along * stepIn, slope * outerFaceIn(product, off));
  const usableSteps = (outerIn: number, fromIn: number, i: number) => {
    const inside = radiusIn[i]! ** 2 - outerIn ** 2;
    const wideIn = inside > 0 ? Math.sqrt(inside) - fromIn : 0;
    return wideIn > 0 ? stepsWithin(wideIn, stepIn) : 0;
  };
  const perInch = perInchOf(job);
  const widthAt = (at: number, outerIn: number, fromIn: number, i: number) =>
    menus[at]!.most[usableSteps(outerIn, fromIn, i)]!;
  const best = (at: number, along: number, off: number) => {
    const product = products[at]!;
    return bestWhereShorterIsWider(perInch[at]!, widthAt, at, outerFaceIn(product, off), startIn(product, along, off));
  };
  return {
    size: stepsWithin(halfUpAt(log, log.lengthIn), stepIn) + 1,
    worth: (at, along, off) => Math.max(0, best(at, along, off).worth - job.passCost),
    board: (at, along, off) => {
      const product = products[at]!;
      const fromIn = startIn(product, along, off);
      const { i, worth } = best(at, along, off);
      const widths = menus[at]!.choice(usableSteps(outerFaceIn(product, off), fromIn, i));
      const greenWidthsIn = widths.map(({ greenSteps }) => greenSteps * stepIn);
      const acrossIn = sum(greenWidthsIn) + (widths.length - 1) * job.ripKerfSteps * stepIn;
      return boardOf({
        product,
        lowIn: offsetIn + off * stepIn,
        lengthFt: lengthsFt[i]!,
        widthsIn: widths.map(({ nominalIn }) => nominalIn),
        greenWidthsIn,
        middleIn: fromIn + acrossIn / 2,
        startIn: Math.max(0, log.lengthIn - IN_PER_FT * lengthsFt[i]! - trimIn),
        value: worth - job.passCost,
      });
    },
  };
}
