import { placeOf } from "../../../formula/addresses";
import { ADD_IN } from "../../../catalog/about/add-in";
import { withPlainNames, withStoredNames, type Respelled } from "../../../formula/plain-names";
import { registry } from "../../../functions/registry";
import { formulaPatches } from "../../../xlsx/formula-elements";
import { formulasIn } from "../../../xlsx/formulas";
import { openPackage } from "../../../xlsx/package";
import { readParts, type SheetPart, type WorkbookParts } from "../../../xlsx/parts";
import { Refused } from "../../../xlsx/refused";
import { tailOf } from "../../../xlsx/sheet-tail";
import { elements, escaped, patched, unescaped, type Patch } from "../../../xlsx/xml";
import { onlineName } from "../../online/name";
import { readBack, type Made, type Unread } from "./made";
import { counted, few, places } from "./words";

/** The hosts that a workbook can be spelled for. */
export const HOSTS = ["online", "excel"] as const;
type Host = (typeof HOSTS)[number];

/** How our functions are spelled for a host, and how a message says what a workbook held before and holds after. */
const WAYS = {
  online: {
    spell: withPlainNames,
    before: "as Excel stores it",
    after: `${ADD_IN}_NAME, as the online sheet calls them`,
  },
  excel: {
    spell: withStoredNames,
    before: `spelled ${ADD_IN}_NAME, as the online sheet calls it`,
    after: "as Excel stores them",
  },
};

/** Elements with the formulas of rules for colours and entries, and of what a table fills into new rows and totals. */
const RULES = ["formula", "formula1", "formula2"];
const COLUMNS = ["calculatedColumnFormula", "totalsRowFormula"];

/** Functions that look for an error. */
const CATCHES_ERRORS = /\b(?:IFERROR|IFNA|ISERROR|ISERR|ISNA|AGGREGATE)\(/i;

interface Place {
  sheet: string;
  row: number;
  column: number;
}

/** What was come across while the formulas were spelled. */
interface Found {
  spell(formula: string): Respelled;
  calls: number;
  sheets: Set<string>;
  /** Formulas that stand in no cell: names, rules and what tables fill in. */
  elsewhere: number;
  unknown: Set<string>;
  stuck: Place[];
  spills: Place[];
  catching: Place[];
  laterRules: Set<string>;
}

/**
 * The workbook with our functions spelled for another host; all else stays, byte for byte. Array formulas keep their form,
 * though the online sheet needs none: it says which cells an answer fills, so that the values last seen in them do not
 * stand in its way as if somebody had typed them, and the way back leads to the same workbook.
 */
export async function converted(bytes: Uint8Array, at: Date, host: string): Promise<Made> {
  return readBack(bytes, spelledFor(host as Host, bytes, at), at);
}

function spelledFor(host: Host, bytes: Uint8Array, at: Date): Unread {
  const workbook = readParts(openPackage(bytes, at));
  const { file, sheets, macros } = workbook;
  mustNotBeNamedLikeOurs(workbook);
  const found: Found = {
    spell: (formula) => WAYS[host].spell(ADD_IN, formula, (name) => Object.hasOwn(registry, name)),
    ...{ calls: 0, sheets: new Set(), elsewhere: 0 },
    ...{ unknown: new Set(), stuck: [], spills: [], catching: [], laterRules: new Set() },
  };
  const cells = new Map(sheets.map((sheet) => [sheet.part, spellSheet(workbook, sheet, found)]));
  spellElements(workbook, workbook.part, ["definedName"], found);
  for (const part of sheets.flatMap(({ tableParts }) => tableParts)) spellElements(workbook, part, COLUMNS, found);
  const left = leftSentences(host, found);
  if (found.calls + found.elsewhere === 0)
    throw new Refused(
      [`it holds no BOLE formula ${WAYS[host].before}: there is nothing to convert`, ...left].join("; "),
    );
  const done = `${counted(found.calls, "call")} of BOLE functions on ${counted(found.sheets.size, "sheet")} now spelled ${WAYS[host].after}`;
  const beside =
    found.elsewhere > 0 &&
    `so ${found.elsewhere === 1 ? "was" : "were"} ${counted(found.elsewhere, "formula")} of names, rules and tables' new rows`;
  const parts = new Set([...file.touched()].filter((part) => !cells.has(part)));
  const summary = [done, beside, ...left].filter(Boolean).join("; ");
  return { bytes: file.bytes(), intended: { cells, parts }, macros, summary };
}

/** A name of the workbook's own would be taken for our function, or our function for that name. */
function mustNotBeNamedLikeOurs({ names }: WorkbookParts): void {
  const ours = new Set(Object.keys(registry).map(onlineName));
  const taken = names.find(({ name }) => ours.has(name.toUpperCase()));
  if (taken)
    throw new Refused(`it gives the name ${taken.name}, which is a function in the online sheet: rename it first`);
}

/** Spells the formulas of a sheet's cells and rules, and answers the cells that change, as reading back wants them. */
function spellSheet({ file }: WorkbookParts, sheet: SheetPart, found: Found): Set<string> {
  const { xml } = sheet.xml;
  const changed = new Set<string>();
  const patches: Patch[] = [];
  for (const { cell, stored } of formulasIn(sheet.xml)) {
    const place = { sheet: sheet.name, row: cell.row, column: cell.column };
    const spelled = lookedAt(stored, found);
    if (spelled.stuck) found.stuck.push(place);
    if (/ANCHORARRAY\(/i.test(stored)) found.spills.push(place);
    if (spelled.calls === 0) continue;
    if (CATCHES_ERRORS.test(stored)) found.catching.push(place);
    found.calls += spelled.calls;
    found.sheets.add(sheet.name);
    const { start, end, text } = cell.formula!;
    // A formula that was copied down stands in the file once, in the first of its cells.
    if (!text) continue;
    patches.push({
      start: xml.indexOf(">", start) + 1,
      end: xml.lastIndexOf("<", end - 1),
      text: escaped(spelled.formula),
    });
    changed.add(placeOf(place));
  }
  const tail = tailOf(xml);
  for (const { start, end, text } of formulaPatches(tail.xml, RULES, (formula) => spelledElsewhere(formula, found)))
    patches.push({ start: tail.inWhole(start), end: tail.inWhole(end), text });
  // The list of extensions writes a rule's formula as `f`; reading back holds that list to be as it was.
  if (tail.start > 0 && elements(tail.xml, "f").some(({ inside }) => found.spell(unescaped(inside)).calls > 0))
    found.laterRules.add(sheet.name);
  if (patches.length > 0) file.put(sheet.part, patched(xml, patches));
  return changed;
}

function spellElements({ file }: WorkbookParts, part: string, names: readonly string[], found: Found): void {
  const xml = file.text(part);
  const patches = formulaPatches(xml, names, (formula) => spelledElsewhere(formula, found));
  if (patches.length > 0) file.put(part, patched(xml, patches));
}

function spelledElsewhere(formula: string, found: Found): string {
  const spelled = lookedAt(formula, found);
  if (spelled.calls > 0) found.elsewhere += 1;
  return spelled.formula;
}

function lookedAt(formula: string, found: Found): Respelled {
  // Most formulas ask us nothing, and are not taken apart to find that out.
  if (!formula.toUpperCase().includes(ADD_IN)) return { formula, calls: 0, unknown: [] };
  const spelled = found.spell(formula);
  for (const name of spelled.unknown) found.unknown.add(name);
  return spelled;
}

/** What was found and left as it is, and why. */
function leftSentences(host: Host, { unknown, stuck, spills, catching, laterRules }: Found): string[] {
  const sentences = [
    unknown.size > 0 && `left as found, since Bole has no such function: ${few([...unknown])}`,
    stuck.length > 0 &&
      `${counted(stuck.length, "formula")} left as found, since Excel reads no ARRAYFORMULA and no range without an end: ${places(stuck)}`,
    laterRules.size > 0 &&
      `rules of the newer kind, which look at other sheets, left as found on ${few([...laterRules])}: they ask BOLE for nothing there`,
    host === "online" &&
      catching.length > 0 &&
      `${counted(catching.length, "formula")} that ask BOLE within IFERROR or the like do not see a refusal among several answers there, where it is text: ${places(catching)}`,
    host === "online" &&
      spills.length > 0 &&
      `${counted(spills.length, "formula")} that point at a spilled answer with # left as found, which the online sheet does not have: ${places(spills)}`,
  ];
  return sentences.filter((sentence): sentence is string => Boolean(sentence));
}
