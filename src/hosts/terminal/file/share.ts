import type { CellAnswer, Engine } from "../../../engine/engine";
import { blockAt, placeOf, rangeOf, type Block } from "../../../formula/addresses";
import { addInId } from "../../add-in-id";
import { addAboutSheet, type Line } from "./about-sheet";
import { withoutAddIn } from "./add-in-part";
import { same, type Result } from "./calculate";
import { Changes } from "./changes";
import { dropCalculationOrder } from "../../../xlsx/calculation-order";
import { withNotes, type Note } from "../../../xlsx/notes";
import { openPackage } from "../../../xlsx/package";
import { agrees, calculateBole, type Calculated } from "./plan";
import { Refused } from "../../../xlsx/refused";
import { readBack, type Made, type Unread } from "./made";
import { tailOf } from "../../../xlsx/sheet-tail";
import { withCells } from "../../../xlsx/sheet-edit";
import { elements, unescaped } from "../../../xlsx/xml";
import { withFixedSpillsIn, withFixedSpillsOf } from "./spill-pointers";
import { withoutBoleColumns } from "./table-formulas";
import { counted, dayAndHour, few, places, whatElse } from "./words";
import { asksBole, asShown, keyOf, readCalculating, type Formula, type Sheet, type Workbook } from "./workbook";

/** Elements in which the formulas of rules for colours and entries stand. */
const RULES = ["formula", "formula1", "formula2"];

/** What was done to the copy beside turning cells into values, and to which sheets. */
interface Done {
  cells: [sheet: string, count: number][];
  /** The cells that were to change, by the sheet's part. */
  changed: ReadonlyMap<string, ReadonlySet<string>>;
  sentences: string[];
}

/** A copy for someone without the add-in: our formulas become their values and hang on the cells as notes. */
export async function shared(bytes: Uint8Array, engine: Engine, at: Date): Promise<Made> {
  return readBack(bytes, await copied(bytes, engine, at), at);
}

async function copied(bytes: Uint8Array, engine: Engine, at: Date): Promise<Unread> {
  const workbook = readCalculating(openPackage(bytes, at), at);
  const calculated = await calculateBole(workbook, engine, true);
  if (calculated.bole.length === 0) throw new Refused("it holds no BOLE formula: it can be handed on as it is");
  const done = freeze(workbook, calculated);
  addAboutSheet(workbook, aboutLines(done, at));
  const [cells, sheets] = [calculated.bole.length, done.cells.length];
  const first = `${counted(cells, "cell")} on ${counted(sheets, "sheet")} became values, taken ${dayAndHour(at)}, their formulas kept as notes`;
  return {
    bytes: workbook.file.bytes(),
    intended: { cells: done.changed, parts: workbook.file.touched() },
    macros: workbook.macros,
    summary: [first, ...done.sentences].join("; "),
  };
}

function freeze(workbook: Workbook, calculated: Calculated): Done {
  const { file, sheets } = workbook;
  const { bole, results } = calculated;
  const resultOf = new Map(results.map((result) => [result.formula, result]));
  const frozen = new Map(bole.map((one) => [key(one), resultOf.get(one)?.block ?? one.block]));
  const spilled = new Map(
    [...frozen].filter(([, block]) => !same(block, blockAt({ row: block.top, column: block.left }))),
  );
  const crowded: Formula[] = [];
  const changed = new Map<string, ReadonlySet<string>>();
  let renamedSpills = 0;
  for (const sheet of sheets) {
    const changes = new Changes(sheet);
    for (const result of results) if (result.formula.sheet === sheet.name) changes.show(result);
    const own = sheet.formulas.filter((formula) => formula.bole);
    for (const formula of own) changes.add(becomesValue(formula, resultOf.get(formula)));
    renamedSpills += fixSpills(sheet, spilled, changes);
    const list = changes.list();
    changed.set(sheet.part, new Set(list.map(placeOf)));
    const before = list.length > 0 ? withCells(sheet.xml, list) : sheet.xml.xml;
    const pointed = withFixedSpillsIn(before, RULES, sheet.name, spilled);
    renamedSpills += pointed.count;
    const noted = withNotes(
      file,
      sheet.part,
      pointed.xml,
      own.map((one) => noteOn(one, resultOf.get(one))),
    );
    if (noted.xml !== sheet.xml.xml) file.put(sheet.part, noted.xml);
    crowded.push(
      ...own.filter(({ row, column }) => noted.crowded.some((one) => one.row === row && one.column === column)),
    );
  }
  renamedSpills += fixSpillsInNames(workbook, spilled);
  const columns = sheets.flatMap((sheet) =>
    sheet.tableParts.flatMap((part) => withoutBoleColumns(workbook, sheet, part)),
  );
  dropCalculationOrder(workbook.file, workbook.part);
  const paneGone = withoutAddIn(workbook.file, addInId());
  const cells = sheets.map((sheet): [string, number] => [sheet.name, sheet.formulas.filter((one) => one.bole).length]);
  const sentences = [
    ...changedSentences(calculated),
    columns.length > 0 &&
      `the formula for new rows or totals was taken out of ${counted(columns.length, "table column")} (${few(columns)})`,
    renamedSpills > 0 &&
      `${counted(renamedSpills, "formula")} that pointed at a spilled answer (with #) now names its cells`,
    crowded.length > 0 && `no note on cells that people discuss in a thread: ${crowded.map(formulaLine).join("; ")}`,
    paneGone && "the workbook no longer asks to load the add-in",
    ...leftSentences(workbook),
    ...whatElse(calculated),
  ].filter((sentence): sentence is string => Boolean(sentence));
  return { cells: cells.filter(([, count]) => count > 0), changed, sentences };
}

/** Without any value, an error says that one is missing; a blank would count as 0. */
function becomesValue({ row, column, cached }: Formula, result: Result | undefined) {
  return { row, column, dropFormula: true, ...(result || cached !== null ? {} : { value: "#N/A" }) };
}

function noteOn(formula: Formula, result: Result | undefined): Note {
  const { row, column, stored, block } = formula;
  const filled = result?.block ?? block;
  const spill = same(filled, blockAt(formula)) ? "" : `\nIts answer fills ${rangeOf(filled)}.`;
  return { row, column, text: `Formula: ${asShown(stored)}${spill}${reasonFor(result?.values[0]?.[0])}` };
}

function reasonFor(answer: CellAnswer | undefined): string {
  return typeof answer === "object" && answer.message ? `\n${answer.error}: ${answer.message}` : "";
}

function fixSpills(sheet: Sheet, spilled: ReadonlyMap<string, Block>, changes: Changes): number {
  if (spilled.size === 0) return 0;
  const pointing = sheet.formulas.filter(({ bole, stored }) => !bole && /ANCHORARRAY/i.test(stored));
  const changed = pointing.flatMap(({ row, column, stored }) => {
    const formula = withFixedSpillsOf(stored, sheet.name, spilled);
    return formula === stored ? [] : [{ row, column, formula }];
  });
  for (const change of changed) changes.add(change);
  return changed.length;
}

function fixSpillsInNames({ file, part }: Workbook, spilled: ReadonlyMap<string, Block>): number {
  const { xml, count } = withFixedSpillsIn(file.text(part), ["definedName"], "", spilled);
  if (count > 0) file.put(part, xml);
  return count;
}

function changedSentences({ bole, results, doubtful }: Calculated): string[] {
  const changed = results.filter((result) => result.formula.cached !== null && !agrees(result));
  const ours = changed.filter(({ formula }) => formula.bole).map(({ formula }) => formula);
  const others = changed.filter(({ formula }) => !formula.bole).map(({ formula }) => formula);
  const empty = bole.filter((formula) => formula.cached === null);
  const sentences: string[] = [];
  if (ours.length > 0)
    sentences.push(
      `${counted(ours.length, "of these values was", "of these values were")} out of date in the file and calculated afresh: ${places(ours)}`,
    );
  if (empty.length > 0)
    sentences.push(`${counted(empty.length, "cell")} had no value in the file and were calculated: ${places(empty)}`);
  if (others.length > 0)
    sentences.push(`${counted(others.length, "formula")} that lean on them show the new values: ${places(others)}`);
  if (doubtful.size > 0 && ours.length + empty.length > 0)
    sentences.push(
      `${counted(doubtful.size, "formula")} that lean on them may be out of date until Excel calculates: ${places([...doubtful])}`,
    );
  return sentences;
}

/** Our functions where a copy cannot do without them: named formulas, rules for colours and for what may be typed. */
function leftSentences({ sheets, names, meant }: Workbook): string[] {
  const asking = names.filter((name) => asksBole(meant(name.refersTo, name.sheet ?? -1)));
  const ruled = sheets.filter(({ xml }) => rulesBehind(xml).some(asksBole));
  const sentences: string[] = [];
  if (asking.length > 0)
    sentences.push(
      `${counted(asking.length, "name")} still stands for a BOLE formula and shows #NAME? here: ${asking.map(({ name }) => name).join(", ")}`,
    );
  if (ruled.length > 0)
    sentences.push(
      `rules for colours or entries still ask BOLE on ${ruled.map(({ name }) => name).join(", ")} and do nothing here`,
    );
  return sentences;
}

function formulaLine(formula: Formula): string {
  return `${places([formula])} ${asShown(formula.stored)}`;
}

function aboutLines({ cells, sentences }: Done, at: Date): Line[] {
  const total = cells.reduce((sum, [, count]) => sum + count, 0);
  return [
    "About this copy",
    "",
    "This workbook is a copy for reading without the Bole add-in.",
    "Cells that were calculated with Bole's functions hold their values; the formula is in the note on each such cell.",
    "These values do not follow when a number is changed here: change it in the original and make a new copy.",
    "",
    ["Values taken", dayAndHour(at)],
    ["Cells that became values", total],
    "",
    ["Sheet", "Cells"],
    ...cells,
    "",
    ...(sentences.length > 0 ? ["What else to know"] : []),
    ...sentences.map((sentence) => `${sentence.charAt(0).toUpperCase()}${sentence.slice(1)}.`),
  ];
}

function key({ sheet, row, column }: Formula): string {
  return keyOf(sheet, row, column);
}

/** The formulas of a sheet's rules for colours and entries; the list of extensions writes them as `f`. */
function rulesBehind({ xml }: Sheet["xml"]): string[] {
  const rules = tailOf(xml).xml;
  return [...RULES, "f"].flatMap((name) => elements(rules, name)).map(({ inside }) => unescaped(inside));
}
