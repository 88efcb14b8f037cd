import { NEAR } from "../../rounding";
import type { BoardWidth, CutJob, PriceStep, Product } from "./cut-job";
import { widestIn } from "./cut-job";

/** For every usable width, in scale steps, the best widths to edge or rip out of it. */
export interface WidthMenu {
  /** Width times price of the best choice: inches of board where a board foot counts 1. */
  most: Float64Array;
  /** The widths of that choice, widest first. */
  choice(usableSteps: number): BoardWidth[];
}

/** The menu of each product. Products of the same prices share one. */
export function widthMenus(job: CutJob): WidthMenu[] {
  const made = new Map<string, WidthMenu>();
  return job.products.map(({ prices }) => {
    const key = prices.map(({ fromWidthIn, perBoardFoot }) => `${fromWidthIn}:${perBoardFoot}`).join();
    const menu = made.get(key) ?? (job.rip ? ripMenu(job, prices) : edgeMenu(job, prices));
    made.set(key, menu);
    return menu;
  });
}

/** One board out of a flitch: the width that is worth most, of those that fit. */
function edgeMenu(job: CutJob, prices: readonly PriceStep[]): WidthMenu {
  const size = capacity(job) + 1;
  const most = new Float64Array(size);
  const chosen = new Int16Array(size).fill(-1);
  job.widths.forEach(({ nominalIn, greenSteps }, at) => {
    const value = nominalIn * priceAt(prices, nominalIn);
    if (greenSteps < size && value > most[greenSteps]!) {
      most[greenSteps] = value;
      chosen[greenSteps] = at;
    }
  });
  for (let steps = 1; steps < size; steps++) {
    if (most[steps]! > most[steps - 1]!) continue;
    most[steps] = most[steps - 1]!;
    chosen[steps] = chosen[steps - 1]!;
  }
  const choice = (steps: number) => (chosen[steps]! < 0 ? [] : [job.widths[chosen[steps]!]!]);
  return { most, choice };
}

/**
 * Boards side by side. Each takes its width and a rip kerf. The last one needs no kerf behind it, so the flitch is counted
 * as one rip kerf wider than it is.
 */
function ripMenu(job: CutJob, prices: readonly PriceStep[]): WidthMenu {
  const size = capacity(job) + job.ripKerfSteps + 1;
  const withKerf = new Float64Array(size);
  const chosen = new Int16Array(size).fill(-1);
  const takes = job.widths.map(({ greenSteps }) => Math.max(1, greenSteps + job.ripKerfSteps));
  const values = job.widths.map(({ nominalIn }) => nominalIn * priceAt(prices, nominalIn));
  for (let steps = 1; steps < size; steps++) {
    let best = withKerf[steps - 1]!;
    for (let at = 0; at < takes.length; at++) {
      if (takes[at]! > steps) continue;
      const value = values[at]! + withKerf[steps - takes[at]!]!;
      if (value <= best + NEAR) continue;
      best = value;
      chosen[steps] = at;
    }
    withKerf[steps] = best;
  }
  const choice = (usable: number) => {
    const widths: BoardWidth[] = [];
    for (let steps = usable + job.ripKerfSteps; steps > 0;) {
      const at = chosen[steps]!;
      if (at >= 0) widths.push(job.widths[at]!);
      steps -= at >= 0 ? takes[at]! : 1;
    }
    return widths.sort((a, b) => b.nominalIn - a.nominalIn);
  };
  return { most: withKerf.subarray(job.ripKerfSteps), choice };
}

/** The price of the last step that the width reaches; nothing below the first. */
export function priceAt(prices: Product["prices"], widthIn: number): number {
  let price = 0;
  for (const { fromWidthIn, perBoardFoot } of prices) if (fromWidthIn <= widthIn + NEAR) price = perBoardFoot;
  return price;
}

/** No flitch is wider than the butt. */
function capacity(job: CutJob): number {
  return Math.ceil(widestIn(job.log) / job.stepIn) + 1;
}
