import { isCellError } from "../../src/cells/error";
import type { WorksheetFunction } from "../../src/cells/spread";

type Given = (unknown[][] | null | undefined)[];

/**
 * What is wrong with how one argument of a call takes a zero, or undefined. A number 0, a zero typed as text, a blank and
 * an argument left out are compared: they may be equal only where the declaration says that they mean the same.
 */
export function zeroFault(formula: WorksheetFunction, given: Given, at: number): string | undefined {
  const { name, facts } = formula.takes[at]!;
  const { zero, zeroAs, optional } = facts;
  if (!zero || facts.many) return undefined;
  const asked = (cell: unknown) => formula(...given.map((cells, i) => (i === at ? [[cell]] : cells)));
  const told = (cell: unknown) => plain(asked(cell));
  const number = told(0);
  const blank = told(null);
  const said = `${name} (a zero means ${zero}) of ${JSON.stringify(given)}`;
  const texts = ["0", zeroAs, "none"].filter((text) => text !== undefined).map((text) => [text, told(text)] as const);

  if (zero === "none") {
    const other = [["0", number] as const, ...texts].find(([, answer]) => answer !== blank);
    return other && `${said}: ${other[0]} gives ${other[1]}, a blank ${blank}`;
  }
  const unlike = texts.find(([text, answer]) => text !== "none" && answer !== texts[0]![1]);
  if (unlike && zero !== "blank") return `${said}: "0" gives ${texts[0]![1]}, "${unlike[0]}" ${unlike[1]}`;
  if (zero === "blank") {
    if (number !== blank) return `${said}: 0 gives ${number}, a blank ${blank}`;
    const silent = optional && texts.find(([text]) => asked(text).flat().some(answersSomething));
    return silent ? `${said}: "${silent[0]}" is taken in silence and gives ${silent[1]}` : undefined;
  }
  if (zero === "text" && asked(0).flat().some(answersSomething)) return `${said}: a number 0 gives ${number}`;
  if (zero === "number" && number !== texts[0]![1] && asked(0).flat().some(answersSomething))
    return `${said}: 0 gives ${number}, "0" ${texts[0]![1]}`;
  return undefined;
}

/** A row that nobody has filled in answers 0. */
function answersSomething(cell: unknown): boolean {
  return !isCellError(cell) && cell !== 0;
}

/** An answer as text. That a message says "a blank" of the one and "a blank or 0" of the other is no difference. */
function plain(answer: unknown): string {
  return JSON.stringify(answer).replaceAll("a blank or 0", "a blank");
}
