import type { Draft } from "../../draft";
import { freeze, put, repeatRows, startPage } from "../../drawing/page";
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
    const column = page.sheet.getColumn(i + 1).letter;
    put(page, `${column}${HEADER_ROW}`, heading, HEADER);
    names.forEach((value, j) => put(page, `${column}${HEADER_ROW + 1 + j}`, value, { ...TEXT, numFmt: "@" }));
    const range = `$${column}$${HEADER_ROW + 1}:$${column}$${HEADER_ROW + names.length}`;
    draft.book.definedNames.add(`'Lists'!${range}`, name);
  });
  page.sheet.getRow(HEADER_ROW).height = 33;
  freeze(page, HEADER_ROW, 0);
  repeatRows(page, HEADER_ROW, HEADER_ROW);
}
