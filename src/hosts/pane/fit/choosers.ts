import type { Entry, Param } from "../../../catalog/entry";
import { element } from "../element";
import type { HeadedBlock, SheetColumn } from "./block";
import { fitted, type Fitted, type Fitting } from "./fit";
import { asChosen, columnName, remarkOn } from "./suggested";

/** The drop-downs of a function's arguments, and what is chosen in them. */
export interface Choosers {
  rows: HTMLElement[];
  /** The column that stands for an argument; nothing where what is typed stands for it. */
  sourceOf: (param: Param) => Fitting | undefined;
  /** Why a chosen column cannot stand where it was put. */
  refused: () => string | undefined;
  /** What is chosen for each argument, by the place of the column on the sheet. */
  chosen: () => ReadonlyMap<string, number | undefined>;
}

/** A drop-down of the columns for each argument that reads a value of every row, with the one that fits chosen. */
export function columnChoosers(
  entry: Entry,
  block: HeadedBlock,
  before: ReadonlyMap<string, number | undefined> | undefined,
  changed: () => void,
): Choosers {
  const fits = fitted(entry, block);
  const choosers = fits.map((fit) => {
    const kept = block.columns.find(({ column }) => column === before?.get(fit.param.name));
    return chooser(entry, block, before ? asKept(entry, fit, kept) : fit, changed);
  });
  const isFirst = (at: number) => !fits[at]!.param.optional || choosers[at]!.column() !== undefined;
  const more = choosers.filter((_, at) => !isFirst(at));
  const names = fits.filter((_, at) => !isFirst(at)).map(({ param }) => param.name);
  const folded = element(
    "details",
    {},
    element("summary", {}, `Columns for ${names.join(", ")}`),
    ...more.map(({ row }) => row),
  );
  const whole = entry.params.filter(({ many }) => many !== undefined).map(({ name }) => name);
  return {
    rows: [
      ...choosers.filter((_, at) => isFirst(at)).map(({ row }) => row),
      ...(more.length > 0 ? [folded] : []),
      ...(whole.length > 0
        ? [element("p", { class: "quiet" }, `What is typed below for ${whole.join(", ")} goes for every row.`)]
        : []),
    ],
    sourceOf: (param) => {
      const chosen = choosers[fits.findIndex((fit) => fit.param === param)]?.found();
      return typeof chosen === "string" ? undefined : chosen;
    },
    refused: () => choosers.map(({ found }) => found()).find((found) => typeof found === "string"),
    chosen: () => new Map(choosers.map(({ column }, at) => [fits[at]!.param.name, column()?.column])),
  };
}

/** What was found for an argument, or why the column that a person chose cannot stand there. */
type Suggestion = Fitted & { reason?: string };

/** What a person chose for an argument, read in the block as it is now. */
function asKept(entry: Entry, { param }: Fitted, column: SheetColumn | undefined): Suggestion {
  if (!column) return { param, alike: [] };
  const found = asChosen(entry, param, column);
  return typeof found === "string" ? { param, alike: [], reason: found } : { param, alike: [], found };
}

function chooser(entry: Entry, block: HeadedBlock, fit: Suggestion, changed: () => void) {
  const { param } = fit;
  const id = `${entry.name}-column-${param.name}`;
  const option = (column: SheetColumn) => element("option", { value: String(column.column) }, columnName(column));
  const none = element("option", { value: "" }, param.optional ? "left out, or as typed below" : "as typed below");
  const select = element("select", { id, "aria-describedby": `${id}-text` }, none, ...block.columns.map(option));
  select.value = String(fit.found?.column.column ?? "");
  const note = element("p", { id: `${id}-text` });
  let found: Fitting | string | undefined;
  const take = ({ reason, ...one }: Suggestion) => {
    found = reason ?? one.found;
    note.className = reason ? "refused" : "";
    note.textContent = reason ?? remarkOn(entry, block, one);
  };
  const column = () => block.columns.find((one) => String(one.column) === select.value);
  select.addEventListener("change", () => {
    take(asKept(entry, fit, column()));
    changed();
  });
  take(fit);
  const row = element(
    "div",
    { class: "field" },
    element("label", { for: id }, `Column for ${param.name}`),
    select,
    note,
  );
  return { row, column, found: () => found };
}
