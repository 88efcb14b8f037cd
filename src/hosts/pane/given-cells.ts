import { LEFT_OUT } from "../../functions/registry";
import type { SheetHost } from "./sheet-host";
import type { Typed } from "./typed";

/** The cells that stand for an argument, as a function takes them. */
export async function cellsOf(part: Typed, host: SheetHost): Promise<unknown[][] | undefined> {
  if (part.kind === "value") return part.cells;
  return part.kind === "reference" ? host.cellsAt(part.piece) : LEFT_OUT;
}
