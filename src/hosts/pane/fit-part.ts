import type { Entry } from "../../catalog/entry";
import { isCellError } from "../../cells/error";
import { columnLetters, sheetPrefix } from "../../formula/addresses";
import { cellText } from "./answer-shown";
import { button } from "./button";
import { element } from "./element";
import { columnChoosers, type Choosers } from "./fit/choosers";
import { headedBlock, type HeadedBlock, type Lacking } from "./fit/block";
import { formulaIn, formulasDown, isColumn, type Source } from "./fit/column-formula";
import { firstRows, type AnsweredRow } from "./fit/first-rows";
import { answersForRows } from "./fit/fit";
import { freeColumn, headingFor, plainHeading } from "./fit/new-column";
import { TooLarge, type SheetHere } from "./fit/sheet-here";
import { rowsNamed } from "./fit/suggested";
import { followChoice } from "./follow-choice";
import { field } from "./field";
import { Refusal, type SheetHost } from "./sheet-host";
import { SHOWN } from "./shown";
import type { Typed } from "./typed";

/** A block of the person's sheet, with what stands in the pane for it. */
interface Offer {
  here: SheetHere;
  block: HeadedBlock;
  choosers: Choosers;
}

/**
 * "Fit to my sheet": with the chosen cell in a table or under headings of the person's own, the column that fits each
 * argument, the answers of the first rows, and a button that adds a column with the formula. Hidden elsewhere.
 */
export function fitPart(entry: Entry, host: SheetHost, form: HTMLElement, typed: () => Typed[]): HTMLElement {
  const section = element("section", { class: "fit", "aria-label": `Fit ${entry.name} to my sheet`, hidden: "" });
  if (!answersForRows(entry)) return section;
  const preview = element("div", { class: "preview", "aria-live": "polite" });
  const heading = field({ id: `${entry.name}-new-heading`, label: "Heading of the new column", example: "", note: "" });
  const place = heading.row.querySelector("p")!;
  const add = button("Add the column", addColumn, { class: "add" });
  let offer: Offer | undefined;
  let turn = 0;

  const look = () => void read().catch(() => hide());
  section.addEventListener(SHOWN, () => {
    if (isInSight()) look();
  });
  followChoice(host, section, () => {
    if (isInSight()) look();
  });
  form.addEventListener("input", () => void showRows());
  return section;

  function isInSight(): boolean {
    return section.closest("details:not([open]), section[hidden]:not(.fit)") === null && section.isConnected;
  }

  function hide(): void {
    offer = undefined;
    section.hidden = true;
  }

  /** Reads the sheet round the chosen cell; what was chosen in the same block before stays chosen. */
  async function read(): Promise<void> {
    const asked = ++turn;
    const here = await host.sheetHere().catch((reason: unknown) => {
      if (reason instanceof TooLarge) return { lacks: `${reason.message}.` };
      throw reason;
    });
    if (asked !== turn) return;
    const block = "lacks" in here ? here : headedBlock(here);
    if (!block) return hide();
    section.hidden = false;
    if ("lacks" in block) return tellLack(block);
    if ("lacks" in here) return;
    const isSame = offer !== undefined && keyOf(offer.here, offer.block) === keyOf(here, block);
    const chosen = isSame ? offer!.choosers.chosen() : undefined;
    offer = { here, block, choosers: columnChoosers(entry, block, chosen, () => void showRows()) };
    if (!isSame || heading.input.value === "") heading.input.value = plainHeading(entry.returns, entry.name);
    heading.input.value = headingFor(heading.input.value, block);
    const where = block.table ? `the table ${block.table.name}` : `the sheet ${here.sheet}`;
    section.replaceChildren(
      element("h4", {}, "Fit to my sheet"),
      element(
        "p",
        { class: "quiet" },
        `For ${where}, ${rowsNamed(block)}, by the headings in row ${block.headingRow + 1}.`,
      ),
      ...offer.choosers.rows,
      preview,
      heading.row,
      element("div", { class: "buttons" }, add),
    );
    await showRows();
  }

  function tellLack({ lacks }: Lacking): void {
    offer = undefined;
    section.replaceChildren(element("h4", {}, "Fit to my sheet"), element("p", {}, lacks));
  }

  /** What stands for each argument, or why a row cannot be worked out yet. */
  function sources(choosers: Choosers): Source[] | string {
    const parts = typed();
    const all = entry.params.map((param, i): Source => choosers.sourceOf(param) ?? parts[i]!);
    const refused = choosers.refused();
    if (refused) return refused;
    const missing = entry.params.filter(({ optional }, i) => !optional && isNothing(all[i]!)).map(({ name }) => name);
    if (missing.length > 0)
      return `Choose a column for ${missing.join(" and ")}, or type below what goes for every row.`;
    return all.some(isColumn) ? all : "Choose a column for one of them at least.";
  }

  async function showRows(): Promise<void> {
    if (!offer) return;
    const { here, block, choosers } = offer;
    const asked = turn;
    place.textContent = placeOf(offer);
    const all = sources(choosers);
    if (typeof all === "string") return preview.replaceChildren(element("p", {}, all));
    const rows = await firstRows(entry, all, block, host).catch((reason: unknown) => String((reason as Error).message));
    if (asked !== turn) return;
    const formula = formulaIn(block.rows[0]!, entry, all, block, sheetPrefix(here.sheet));
    const shown = Array.isArray(rows)
      ? element("ul", { class: "rows" }, ...rows.map(shownRow))
      : element("p", {}, rows ?? "The sheet has to work this one out: add the column to see the answers.");
    preview.replaceChildren(element("code", {}, formula), shown);
  }

  async function addColumn(): Promise<string> {
    const before = offer && keyOf(offer.here, offer.block);
    await read();
    if (!offer || keyOf(offer.here, offer.block) !== before)
      throw new Refusal("The sheet has changed meanwhile. Look at the columns, then press again");
    const { here, block, choosers } = offer;
    const all = sources(choosers);
    if (typeof all === "string") throw new Refusal(all.replace(/\.$/, ""));
    if (/^\s*[=+@-]/.test(heading.input.value))
      throw new Refusal("A heading that begins so would be a formula. Use words");
    const said = await host.addColumn({
      sheet: here.sheet,
      ...(block.table && { table: block.table.name }),
      column: freeColumn(block, here),
      headingRow: block.headingRow,
      heading: heading.input.value,
      formulas: formulasDown(entry, all, block, sheetPrefix(here.sheet)),
    });
    heading.input.value = "";
    look();
    return said;
  }
}

function shownRow({ row, read, answer }: AnsweredRow): HTMLElement {
  const strong = element(isCellError(answer) ? "span" : "strong", {}, cellText(answer));
  if (isCellError(answer)) strong.className = "refused";
  return element("li", {}, `Row ${row + 1} (${read.map(cellText).join(", ")}): `, strong);
}

/** Where the column will stand, or why it cannot. */
function placeOf({ here, block }: Offer): string {
  try {
    return `It goes into column ${columnLetters(freeColumn(block, here))}. Nothing is written over.`;
  } catch (refused) {
    return `${(refused as Refusal).message}.`;
  }
}

function isNothing(source: Source): boolean {
  return !isColumn(source) && source.kind === "nothing";
}

/** The same block has the same place and the same headings; new rows at its foot do not make another of it. */
function keyOf({ sheet }: SheetHere, { box, columns, table }: HeadedBlock): string {
  return JSON.stringify([sheet, table?.name, box.top, box.left, columns.map(({ heading }) => heading)]);
}
