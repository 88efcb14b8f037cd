import { randomUUID } from "node:crypto";
import { readWorkbook } from "../../engine/workbook/read";
import { snapshotOf } from "../../engine/workbook/snapshot";
import { cannotBeOpened } from "../terminal/sample";
import { withFreeSheet } from "./free-sheet";
import { NotTaken } from "./requests";

/** A workbook as its page asks for it. */
export interface ServedWorkbook {
  /** The workbook for the grid; its name is the file's. */
  snapshot: unknown;
  bytes: Uint8Array;
}

/** The workbooks that pages were opened with, each at an address of its own, as long as the program runs. */
export function openFiles(first: ServedWorkbook) {
  const opened = new Map<string, ServedWorkbook>([["", first]]);

  /** The workbook at an address: the one that the program was started with where the address names none. */
  function at(search: URLSearchParams): ServedWorkbook {
    const found = opened.get(search.get("workbook") ?? "");
    if (!found)
      throw new NotTaken(404, "This workbook is no longer open here: open its file again at the page's own address.");
    return found;
  }

  /** Opens a file and answers its address. The page calculates it. */
  function open(bytes: Uint8Array, name: string): string {
    try {
      const snapshot = { ...snapshotOf(readWorkbook(bytes), "bole", name) };
      const id = randomUUID();
      opened.set(id, { snapshot: withFreeSheet(snapshot), bytes });
      return `/?workbook=${id}`;
    } catch (fault) {
      throw new NotTaken(422, cannotBeOpened(name, fault).message);
    }
  }

  return { at, open };
}
