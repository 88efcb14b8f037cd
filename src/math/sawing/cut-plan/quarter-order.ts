import type { CutJob } from "./cut-job";
import { SAME_WORTH } from "./stack";

/** A quarter of the log: what a board is worth that begins `off` a face and `along` it, in steps from its corner. */
export interface QuarterWorth {
  size: number;
  worth(product: number, along: number, off: number): number;
}

/** One board: the face it comes off, and where it begins. */
export interface QuarterStep {
  face: "A" | "B";
  product: number;
  along: number;
  off: number;
}

/**
 * The best order of boards off faces A and B from the corner out, by dynamic programming over how much is off either
 * face. Only states that boards lead to are weighed, and the quarter is the same seen from either face, so that one
 * half of them serves both.
 */
export function bestOrder(job: CutJob, { size, worth }: QuarterWorth): QuarterStep[] {
  const unit = commonDrop(job);
  const drops = job.products.map(({ greenSteps }) => (greenSteps + job.kerfSteps) / unit);
  const cells = Math.ceil(size / unit);
  const at = (i: number, j: number) => (i < j ? (j * (j + 1)) / 2 + i : (i * (i + 1)) / 2 + j);
  const states = at(cells - 1, cells - 1) + 1;

  const reached = new Uint8Array(states);
  reached[0] = 1;
  for (let i = 0; i < cells; i++)
    for (let j = i; j < cells; j++) {
      if (!reached[at(i, j)]) continue;
      for (const drop of drops) {
        if (j + drop < cells) reached[at(i, j + drop)] = 1;
        if (i + drop < cells) reached[at(i + drop, j)] = 1;
      }
    }

  const most = new Float64Array(states);
  const boards = new Int32Array(states);
  const next = new Int32Array(states).fill(-1);
  const weigh = (here: number, gain: number, after: number, choice: number) => {
    if (gain <= 0) return;
    const total = gain + (after < 0 ? 0 : most[after]!);
    const count = 1 + (after < 0 ? 0 : boards[after]!);
    const better = total - most[here]!;
    if (better < -SAME_WORTH || (better <= SAME_WORTH && count >= boards[here]!)) return;
    most[here] = total;
    boards[here] = count;
    next[here] = choice;
  };
  for (let i = cells - 1; i >= 0; i--)
    for (let j = cells - 1; j >= i; j--) {
      const here = at(i, j);
      if (!reached[here]) continue;
      drops.forEach((drop, product) => {
        weigh(here, worth(product, i * unit, j * unit), j + drop < cells ? at(i, j + drop) : -1, 2 * product);
        weigh(here, worth(product, j * unit, i * unit), i + drop < cells ? at(i + drop, j) : -1, 2 * product + 1);
      });
    }

  const order: QuarterStep[] = [];
  for (let i = 0, j = 0; i < cells && j < cells && next[at(i, j)]! >= 0;) {
    const choice = next[at(i, j)]!;
    const product = choice >> 1;
    // Even choices take the board that begins at the larger of the two offsets.
    const fromA = (choice % 2 === 0) === i <= j;
    const [along, off] = fromA ? [i * unit, j * unit] : [j * unit, i * unit];
    order.push({ face: fromA ? "A" : "B", product, along, off });
    if (fromA) j += drops[product]!;
    else i += drops[product]!;
  }
  return order;
}

/** The greatest number of steps that every drop is a whole multiple of: boards begin nowhere else. */
export function commonDrop({ products, kerfSteps }: CutJob): number {
  const common = (a: number, b: number): number => (b === 0 ? a : common(b, a % b));
  return products.map(({ greenSteps }) => greenSteps + kerfSteps).reduce(common);
}
