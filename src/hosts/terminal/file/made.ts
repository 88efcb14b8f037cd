import { mustKeepTheRest, type Intended } from "../../../xlsx/read-back";

/** A workbook made from another, and one line that says what was done. */
export interface Made {
  bytes: Uint8Array;
  macros: boolean;
  summary: string;
}

/** One that has not been read back yet, with what was to change in it. */
export interface Unread extends Made {
  intended: Intended;
}

/** Reads what was made back against what it was made from. By then all that was kept to make it is gone from memory. */
export function readBack(before: Uint8Array, { intended, ...made }: Unread, at: Date): Made {
  mustKeepTheRest(before, made.bytes, intended, at);
  return made;
}
