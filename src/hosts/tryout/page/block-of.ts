import type { IRange } from "@univerjs/core";
import type { Block } from "../../../formula/addresses";

/** A range of the grid as a block. */
export function blockOfRange({ startRow, startColumn, endRow, endColumn }: IRange): Block {
  return { top: startRow, left: startColumn, bottom: endRow, right: endColumn };
}
