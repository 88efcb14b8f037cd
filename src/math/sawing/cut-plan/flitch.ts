import type { Best } from "./best-length";
import { boardOf, type Board } from "./board";
import type { CutJob } from "./cut-job";
import type { WidthMenu } from "./width-menu";

/** What may be had of a flitch whose lower face is at a height. */
export interface Flitches {
  value(product: number, lowIn: number): number;
  board(product: number, lowIn: number): Board;
}

/** The square-edged boards that go between two heights of a log. */
export interface EdgedBoards {
  /** The length worth most, and what the boards side by side in it are worth. */
  best(product: number, lowIn: number, highIn: number): Best;
  /** How wide boards of the i-th length may be, in scale steps, the middle of that width across the log, and their start. */
  place(lowIn: number, highIn: number, i: number): { usableSteps: number; middleIn: number; startIn: number };
}

/** Square-edged boards out of flitches. Where wane is allowed, an edge may lack part of the thickness at either face. */
export function edgedFlitches(job: CutJob, boards: EdgedBoards, menus: readonly WidthMenu[]): Flitches {
  const { stepIn, lengthsFt, products, passCost } = job;
  const waneIn = products.map(({ greenIn }) => job.wane * greenIn);
  const best = (at: number, lowIn: number) =>
    boards.best(at, lowIn + waneIn[at]!, lowIn + products[at]!.greenIn - waneIn[at]!);

  return {
    value: (at, lowIn) => Math.max(0, best(at, lowIn).worth - passCost),
    board: (at, lowIn) => {
      const product = products[at]!;
      const { i, worth } = best(at, lowIn);
      const { usableSteps, ...place } = boards.place(lowIn + waneIn[at]!, lowIn + product.greenIn - waneIn[at]!, i);
      const widths = menus[at]!.choice(usableSteps);
      return boardOf({
        product,
        lowIn,
        lengthFt: lengthsFt[i]!,
        widthsIn: widths.map(({ nominalIn }) => nominalIn),
        greenWidthsIn: widths.map(({ greenSteps }) => greenSteps * stepIn),
        ...place,
        value: worth - passCost,
      });
    },
  };
}
