import type { Draft } from "../../draft";
import { columnLetters } from "../../../../formula/addresses";
import { freeze, put, repeatRows, startPage, setHeight } from "../../drawing/page";
import { HEADER, TEXT } from "../../drawing/style";

/** A list to choose from: its defined name, its heading and its names. */
export interface NameList {
  name: string;
  heading: string;
  names: readonly string[];
}

const HEADER_ROW = 4;

/** The names behind the drop-down lists. */
export function drawLists(draft: Draft, lists: readonly NameList[]): void {
  const page = startPage(draft, "Lists", {
    title: "Lists: the names to choose from",
    lead: "The drop-down lists of the other sheets. Bole reads other spellings too: trade short forms, Latin names, any case.",
    widths: lists.map(({ names }) => Math.max(16, ...names.map((name) => name.length + 2))),
  });
  lists.forEach(({ name, heading, names }, i) => {
    const column = columnLetters(i);
    put(page, `${column}${HEADER_ROW}`, heading, HEADER);
    names.forEach((value, j) => put(page, `${column}${HEADER_ROW + 1 + j}`, value, { ...TEXT, numberFormat: "@" }));
    const range = `$${column}$${HEADER_ROW + 1}:$${column}$${HEADER_ROW + names.length}`;
    draft.book.names.push({ name: name, refersTo: `'Lists'!${range}` });
  });
  setHeight(page, HEADER_ROW, 33);
  freeze(page, HEADER_ROW, 0);
  repeatRows(page, HEADER_ROW, HEADER_ROW);
}
