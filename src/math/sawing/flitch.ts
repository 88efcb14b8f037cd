import { IN_PER_FT } from "../units";
import type { CutJob, Product } from "./cut-job";
import type { FlitchWidth } from "./flitch-width";
import { SLACK } from "./scale-steps";
import { boardFeetOf, type WidthMenu } from "./width-menu";

/** A flitch and what is edged or ripped out of it, where it lay in the log. Heights are above the bed. */
export interface Board {
  product: Product;
  lowIn: number;
  highIn: number;
  lengthFt: number;
  /** Nominal widths of the boards side by side, and how wide they are sawn. */
  widthsIn: number[];
  greenWidthsIn: number[];
  /** The middle of the boards across the log, and their start from the small end. */
  middleIn: number;
  startIn: number;
  boardFeet: number;
  /** Board feet, or money, less the cost of the pass. */
  value: number;
}

/** What may be had of a flitch whose lower face is at a height. */
export interface Flitches {
  value(product: number, lowIn: number): number;
  board(product: number, lowIn: number): Board;
}

/** Square-edged boards out of a flitch: the length, and the widths in it, that are worth most. */
export function edgedFlitches(job: CutJob, width: FlitchWidth, menus: readonly WidthMenu[]): Flitches {
  const { stepIn, lengthsFt, products, passCost, wane } = job;
  const last = lengthsFt.length - 1;
  const usableSteps = (i: number) => Math.floor(width.usableIn(i) / stepIn + SLACK);

  const look = (product: Product, lowIn: number) =>
    width.look(lowIn + wane * product.greenIn, lowIn + product.greenIn - wane * product.greenIn);

  /** The best of the lengths; a shorter one only when it is worth more. */
  const search = (at: number, lowIn: number): { i: number; worth: number } => {
    const product = products[at]!;
    const { most } = menus[at]!;
    const best = { i: -1, worth: 0 };
    if (last < 0) return best;
    look(product, lowIn);
    const tallyFt = product.tallyIn / IN_PER_FT;
    const ceiling = width.shorterIsWider ? most[usableSteps(last)]! : Infinity;
    if (ceiling === 0) return best;
    for (let i = 0; i <= last; i++) {
      const perWidth = tallyFt * lengthsFt[i]!;
      if (perWidth * ceiling <= best.worth) break;
      const worth = perWidth * most[usableSteps(i)]!;
      if (worth <= best.worth) continue;
      best.worth = worth;
      best.i = i;
    }
    return best;
  };

  return {
    value: (at, lowIn) => Math.max(0, search(at, lowIn).worth - passCost),
    board: (at, lowIn) => {
      const { i, worth } = search(at, lowIn);
      const product = products[at]!;
      const widths = menus[at]!.choice(usableSteps(i));
      const widthsIn = widths.map(({ nominalIn }) => nominalIn);
      return {
        product,
        lowIn,
        highIn: lowIn + product.greenIn,
        lengthFt: lengthsFt[i]!,
        widthsIn,
        greenWidthsIn: widths.map(({ greenSteps }) => greenSteps * stepIn),
        ...width.place(i),
        boardFeet: boardFeetOf(product, widthsIn, lengthsFt[i]!),
        value: worth - passCost,
      };
    },
  };
}
