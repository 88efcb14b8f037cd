import { isCellError } from "../../../cells/error";
import type { TableCell, WorksheetFunction } from "../../../cells/spread";
import sources from "../../sources.json";
import { functionNamed } from "../source-table";
import type { SourceRows } from "../source-rows";
import { byCode } from "./by-code";
import { addedUp } from "./added-up";
import { LEGEND, unitOf, wordsOf } from "./labels";
import { written, type Written } from "./notation";
import { valueText } from "./printed";
import type { Value } from "./values";
import { worked, type Book, type Given, type Line } from "./worked";

const { rows, names, functions }: SourceRows = sources;
const HEADINGS = ["symbol", "what it is", "with the numbers", "value", "unit"];
/** A plan's total without its boards, and the function that lists them. */
const LISTED_BY: Readonly<Record<string, string>> = { CUTYIELD: "CUTPLAN" };
/** A cell of a spreadsheet holds no more. */
const LONGEST_TEXT = 32_000;

type Cells = readonly unknown[];
type Ranges = Parameters<WorksheetFunction>;
type Answers = ReturnType<WorksheetFunction>;
type Row = TableCell[];

/**
 * The steps behind an answer, and the answer last: what was read, each formula with its numbers, roundings as they happen,
 * where the formulas come from. What the function refuses is refused here with its own words.
 */
export function workingTable(
  { name, inputs }: { name: string; inputs: Cells },
  registry: Readonly<Record<string, WorksheetFunction>>,
): TableCell[][] {
  const asked = functionNamed(name);
  const called = registry[asked]!;
  const ranges = inputs as Ranges;
  const answer = called(...ranges);
  const given = givenOrRefused(called, ranges, answer);
  if (isCellError(given)) return [[given]];
  const lister = LISTED_BY[asked];
  const listed = lister ? registry[lister]!(...ranges) : answer;
  const steps = stepsOf(asked, given as Given);
  return squared([HEADINGS, ...steps, ...addedUp(listed), ...answerRows(answer, asked)]);
}

/** Whether there are steps behind a call's answer: it is neither refused nor of several rows at once. */
export function hasSteps(called: WorksheetFunction, ranges: Ranges, answer: Answers): boolean {
  return !isCellError(givenOrRefused(called, ranges, answer));
}

function givenOrRefused(called: WorksheetFunction, ranges: Ranges, answer: Answers) {
  const [[only] = []] = answer;
  return answer.flat().length === 1 && isCellError(only) ? only : called.reads(...ranges);
}

function stepsOf(asked: string, given: Given): Row[] {
  const place = functions[asked]![0]!;
  const own = names[place]!;
  if (own === "") return [];
  const { lines } = worked(own, given, BOOK);
  const used = [...new Set([own, ...lines.map(({ formula }) => formula)])];
  return [
    ...(lines[0]?.formula === own ? [] : headingOf(own)),
    ...lines.flatMap((line, at) => [
      ...(line.formula === lines[at - 1]?.formula ? [] : headingOf(line.formula)),
      rowOf(line),
    ]),
    ...legendOf(lines),
    ...sourcesOf(used),
  ];
}

/** The formulas as SOURCE has them, each taken apart once, when it is first asked for. */
const taken = new Map<string, Written | undefined>();
const BOOK: Book = {
  formula: (name) => {
    if (!taken.has(name)) taken.set(name, rowNamed(name) && written(rowNamed(name)![1]!));
    return taken.get(name);
  },
  code: byCode,
};

function rowNamed(name: string): string[] | undefined {
  return rows[names.indexOf(name)];
}

/** What a formula is for, and why it is none, where it is none. */
function headingOf(name: string): Row[] {
  const unclosed = BOOK.formula(name)?.unclosed;
  return [[rowNamed(name)?.[0] ?? ""], ...(unclosed ? [[unclosed.kind, unclosed.sentence]] : [])];
}

function rowOf({ symbol, rule, numbers, value, unit, reads, formula, isAnswer }: Line): Row {
  const own = unit || unitOf(reads ?? (isAnswer ? formula : symbol));
  return [symbol === reads ? wordsOf(symbol) : symbol, reads ? wordsOf(reads) : rule, cut(numbers), cellOf(value), own];
}

function cellOf(value: Value): TableCell {
  return typeof value === "number" || typeof value === "string" ? value : cut(valueText(value));
}

function cut(text: string): string {
  return text.length > LONGEST_TEXT ? `${text.slice(0, LONGEST_TEXT)}…` : text;
}

function legendOf(lines: readonly Line[]): Row[] {
  const text = lines.map(({ numbers }) => numbers).join(" ");
  const used = Object.keys(LEGEND).filter((name) => new RegExp(`\\b${name}\\b`).test(text));
  return used.map((name) => [name, LEGEND[name]]);
}

/** Where the formulas come from; beside others, plain arithmetic needs no word. */
function sourcesOf(used: readonly string[]): Row[] {
  const found = used.map(rowNamed).filter((row) => row !== undefined);
  const trade = found.filter((row) => row[4] !== "plain arithmetic");
  const told = trade.length > 0 ? trade : found.slice(0, 1);
  return told.map(([sentence, , source, , grade]) => ["source", source, "", grade, told.length > 1 ? sentence : ""]);
}

function answerRows(answer: readonly (readonly TableCell[])[], asked: string): Row[] {
  const [[only] = []] = answer;
  const own = names[functions[asked]![0]!]!;
  const unit = BOOK.formula(own)?.steps[0]?.unit || unitOf(own);
  if (answer.length === 1 && answer[0]!.length === 1)
    return [["answer", "", "", only, typeof only === "number" ? unit : ""]];
  return answer.map((cells, at) => [at === 0 ? "answer" : "", ...cells]);
}

/** Rows of one length, as a sheet wants them. */
function squared(table: readonly Row[]): Row[] {
  const width = table.reduce((most, row) => Math.max(most, row.length), 0);
  return table.map((row) => Array.from({ length: width }, (_, at) => row[at] ?? ""));
}
