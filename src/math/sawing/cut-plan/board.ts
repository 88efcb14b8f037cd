import { sumOf } from "../../numbers";
import { IN_PER_FT } from "../../units";
import type { Product } from "./cut-job";

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

/** A board, from where it lies and what it is cut to. */
export function boardOf(cut: Omit<Board, "highIn" | "boardFeet">): Board {
  const { product, lowIn, widthsIn, lengthFt } = cut;
  const boardFeet = (product.tallyIn * sumOf(widthsIn, (width) => width) * lengthFt) / IN_PER_FT;
  return { ...cut, highIn: lowIn + product.greenIn, boardFeet };
}
