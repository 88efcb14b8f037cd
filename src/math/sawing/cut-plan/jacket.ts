import { NEAR } from "../../rounding";
import { halfUpAt, type CutJob } from "./cut-job";
import type { Board } from "./board";
import type { Flitches } from "./flitch";
import { bestStack, boardsUnder, type Stack } from "./stack";

/** The boards outside one face of a cant, towards the top of the log (1) or the bottom (-1). */
export interface Jacket {
  stack: Stack;
  /** The innermost face of the stack. */
  first: number;
  board(entry: { product: number; face: number }): Board;
}

/**
 * Jacket boards outward from a height: the first inner face is there, every other follows a kerf after the board
 * inside it. Faces are counted from the outside of the log, which the last board may reach without a cut under it.
 */
export function jacket(
  job: CutJob,
  flitches: Flitches,
  innerIn: number,
  way: 1 | -1,
  topIn = 2 * halfUpAt(job.log, job.log.lengthIn),
): Jacket {
  const { stepIn, products, kerfSteps } = job;
  const outerIn = way === 1 ? topIn : 0;
  const first = Math.floor((way * (outerIn - innerIn) + NEAR) / stepIn);
  const lowIn = (product: number, face: number) => {
    const inner = innerIn + way * (first - face) * stepIn;
    return way === 1 ? inner : inner - products[product]!.greenIn;
  };
  const worthAt = (product: number, face: number) => flitches.value(product, lowIn(product, face));
  return {
    stack: bestStack(job, first, -kerfSteps, worthAt),
    first,
    board: ({ product, face }) => flitches.board(product, lowIn(product, face)),
  };
}

/** What the boards outward from a face are worth; nothing where the face is outside the log. */
export function jacketWorth(jacket: Jacket, face: number): number {
  return face < 0 ? 0 : jacket.stack.most[face]!;
}

/** The boards outward from a face, from the cant out. */
export function jacketBoards(job: CutJob, jacket: Jacket, face: number): Board[] {
  return boardsUnder(job, jacket.stack, face).map(jacket.board);
}
