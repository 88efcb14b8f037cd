import { IN_PER_FT } from "../../units";
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

  /** The flitch looked at: its menu, its board feet to the inch and foot, and the best found of its lengths. */
  let most = menus[0]!.most;
  let perFt = 0;
  const best = { i: -1, worth: 0 };

  const weigh = (i: number): number => {
    const menu = most[usableSteps(i)]!;
    const worth = perFt * lengthsFt[i]! * menu;
    if (worth > best.worth || (worth === best.worth && i < best.i)) {
      best.worth = worth;
      best.i = i;
    }
    return menu;
  };
  /** No length between two is longer than the one after the first, nor is its choice of widths better than the second's. */
  const weighBetween = (longer: number, shorter: number, ofShorter: number): void => {
    if (shorter - longer < 2) return;
    const ceiling = perFt * lengthsFt[longer + 1]! * ofShorter;
    if (ceiling < best.worth || (ceiling === best.worth && best.i <= longer)) return;
    const middle = (longer + shorter) >> 1;
    const ofMiddle = weigh(middle);
    weighBetween(longer, middle, ofMiddle);
    weighBetween(middle, shorter, ofShorter);
  };

  /** The best of the lengths; a shorter one only when it is worth more. */
  const search = (at: number, lowIn: number): { readonly i: number; readonly worth: number } => {
    const product = products[at]!;
    most = menus[at]!.most;
    perFt = product.tallyIn / IN_PER_FT;
    best.i = -1;
    best.worth = 0;
    if (last < 0) return best;
    look(product, lowIn);
    if (!width.shorterIsWider) for (let i = 0; i <= last; i++) weigh(i);
    else {
      const ofShortest = weigh(last);
      if (ofShortest > 0 && last > 0) {
        weigh(0);
        weighBetween(0, last, ofShortest);
      }
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
