import { isCellError } from "../../cells/error";
import { element } from "./element";

/** Rows of a long table that the pane shows; the sheet will hold them all. */
const ROWS_SHOWN = 12;

/** An answer as the pane shows it before it goes into a cell: one line, or the head of a table. */
export function shownAnswer(answer: unknown[][], returns: string): HTMLElement {
  if (answer.length === 1 && answer[0]?.length === 1) return shownLine(answer[0][0], returns);
  const table = shownTable(answer.slice(0, ROWS_SHOWN), "Answer");
  const more = answer.length - ROWS_SHOWN;
  return element("div", {}, table, ...(more > 0 ? [element("p", {}, `and ${more} more rows`)] : []));
}

/** Rows of cells, the first of them headings, in a frame that can be scrolled. */
export function shownTable(rows: readonly unknown[][], name: string): HTMLElement {
  const lines = rows.map((row) => element("tr", {}, ...row.map((cell) => element("td", {}, cellText(cell)))));
  return element(
    "div",
    { class: "table", tabindex: "0", role: "group", "aria-label": name },
    element("table", {}, ...lines),
  );
}

function shownLine(cell: unknown, returns: string): HTMLElement {
  if (isCellError(cell)) return element("p", { class: "refused" }, cellText(cell));
  return element("p", {}, "Answer: ", element("strong", {}, cellText(cell)), ` (${returns})`);
}

/** A cell as the pane writes it. */
export function cellText(cell: unknown): string {
  if (isCellError(cell)) return `${cell.error}: ${cell.message}`;
  if (typeof cell === "number") return cell.toLocaleString("en-US", { maximumSignificantDigits: 6 });
  return typeof cell === "boolean" ? String(cell).toUpperCase() : String(cell ?? "");
}
