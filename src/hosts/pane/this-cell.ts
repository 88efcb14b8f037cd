import { ADD_IN } from "../../catalog/about/add-in";
import type { Entry } from "../../catalog/entry";
import { isDateSerial } from "../../cells/read";
import { callsOf, type Call } from "../../formula/calls";
import { argumentsAsRead, UNKNOWN, type Given } from "../../functions/as-read";
import { registry } from "../../functions/registry";
import { shownAnswer } from "./answer-shown";
import { element } from "./element";
import type { SheetHost } from "./sheet-host";
import { typed, type Typed } from "./typed";
import { workingShown, type WorkedCall } from "./working-shown";

type Cells = WorkedCall["cells"];

/** A cell that a person has chosen. */
export interface ChosenCell {
  /** With its sheet. */
  address: string;
  /** With its equals sign; nothing where the cell does not calculate. */
  formula: string;
  value: unknown;
  /** How its number is shown, as the sheet spells it. */
  format?: string;
}

/** Finds the cells that a piece of the cell's formula points at: an address, a name, a table's column; nothing where it cannot. */
export type LookUp = (piece: string) => Promise<unknown[][] | undefined>;

/** Cells by their address and nothing else: not a whole column, a spilled answer or a table's. */
export function isReference(piece: string): boolean {
  return typed(piece).kind === "reference";
}

/**
 * What there is to say of a chosen cell that asks Bole: each call with its arguments as they are read, its answer or why
 * it has none, and how far it can be trusted. Calls within calls are worked out by the sheet.
 */
export async function callsShown(
  cell: ChosenCell,
  catalog: readonly Entry[],
  lookUp: LookUp,
  host?: SheetHost,
): Promise<HTMLElement[]> {
  const calls = callsOf(ADD_IN, cell.formula);
  const sheetPrefix = cell.address.slice(0, cell.address.lastIndexOf("!") + 1);
  const steps = (call: Call, cells: Cells, answer: WorkedCall["answer"]) => {
    const parts = call.pieces.map((piece) => partIn(piece, sheetPrefix));
    return workingShown({ name: call.name, cells, parts, answer }, host);
  };
  return Promise.all(calls.map((call) => callShown(call, catalog, lookUp, steps)));
}

/** A piece of a cell's formula, told with the sheet of its cells, for a formula that may stand on another one. */
function partIn(piece: string, sheetPrefix: string): Typed {
  const part = typed(piece);
  if (part.kind === "reference" && !piece.includes("!")) return { ...part, piece: sheetPrefix + piece };
  // A bare word in a formula is a name, which every sheet knows.
  return part.kind === "value" && part.piece !== piece ? { kind: "expression", piece } : part;
}

async function callShown(
  call: Call,
  catalog: readonly Entry[],
  lookUp: LookUp,
  steps: (call: Call, cells: Cells, answer: WorkedCall["answer"]) => HTMLElement[],
): Promise<HTMLElement> {
  const entry = catalog.find(({ name }) => name === call.name);
  const formula = registry[call.name];
  if (!entry || !formula) return element("p", { class: "refused" }, `Bole has no function ${call.name}.`);
  const given = await Promise.all(call.pieces.map((piece) => cellsGiven(piece, lookUp)));
  const cells = given.includes(UNKNOWN) ? undefined : (given as Cells);
  const answer = cells && formula(...cells);
  return element(
    "section",
    { class: "call", "aria-label": call.name },
    element("h3", {}, call.name),
    element("p", {}, entry.summary),
    element("ul", { class: "read" }, ...argumentsAsRead(formula, given).map((line) => element("li", {}, line))),
    answer
      ? shownAnswer(answer, entry.returns)
      : element("p", { class: "quiet" }, "The sheet works this one out: its answer stands in the cell."),
    ...(answer ? steps(call, cells, answer) : []),
    ...entry.cautions.map((text) => element("p", { class: "caution" }, element("strong", {}, "Caution: "), text)),
    element("p", { class: "quiet" }, `Rests on: ${entry.grade}.${sourceOf(entry)}`),
  );
}

/** The source where there is one; a function of several rules has a source for each, which its page names. */
function sourceOf({ formulas }: Entry): string {
  const sources = [...new Set(formulas.flatMap((one) => one.sources))];
  if (sources.length === 1) return ` Source: ${sources[0]}.`;
  return sources.length > 1 ? " Its page names the source of each rule." : "";
}

/** The cells that stand for an argument. A calculation within the formula is left to the sheet. */
async function cellsGiven(piece: string, lookUp: LookUp): Promise<Given> {
  const read = piece === "" ? typed("") : typed(piece);
  if (read.kind === "nothing") return undefined;
  // A bare word in a formula is a name; only what stands in quotes is text.
  if (read.kind === "value" && read.piece === piece) return read.cells;
  return (await lookUp(piece)) ?? UNKNOWN;
}

/**
 * A size that the sheet has turned into a day, and how it is mended; nothing where the cell holds no day, or one with day
 * and year, which a person has typed as such: 5/4 becomes the fourth of May of no year that is shown, 1/32 a month.
 */
export function dateWarning({ formula, value, format = "" }: ChosenCell): string | undefined {
  const parts = format.replace(/"[^"]*"|\[[^\]]*\]/g, "").toLowerCase();
  const isWholeDate = parts.includes("d") && parts.includes("y");
  if (formula !== "" || typeof value !== "number" || !isDateSerial(value)) return undefined;
  if (!/[dmy]/.test(parts) || isWholeDate) return undefined;
  return (
    "This cell holds a date. If it was meant as a size (5/4, 8-6), the sheet turned it into a day as it was typed: " +
    "format the cell as Text, then type it again, or type an apostrophe first: '5/4."
  );
}
