import * as registry from "../../src/functions";

type WorksheetFunction = (...cells: unknown[][][]) => unknown[][];

/** A formula of literals, such as =BOLE.NAME(20, "Doyle", {1;2}), taken apart into its function and its arguments. */
export function literalCall(formula: string): { name: string; given: unknown[][][] } {
  const [, name = "", inside = ""] = /^=BOLE\.([A-Z0-9]+)\(([\s\S]*)\)$/.exec(formula) ?? [];
  if (!name) throw new Error(`Not a call of one of Bole's functions: ${formula}`);
  return { name, given: inside.trim() === "" ? [] : split(inside, ",").map(argument) };
}

/** What the function of a formula of literals answers. */
export function answerTo(formula: string): unknown[][] {
  const { name, given } = literalCall(formula);
  const called = (registry as unknown as Record<string, WorksheetFunction>)[name];
  if (!called) throw new Error(`No function ${name}`);
  return called(...given);
}

/** The value of one literal: a number, text, a truth value, or nothing. */
export function literal(written: string): unknown {
  const text = written.trim();
  if (text === "") return null;
  if (text.startsWith('"')) return text.slice(1, -1).replaceAll('""', '"');
  if (/^(?:TRUE|FALSE)$/i.test(text)) return text.toUpperCase() === "TRUE";
  if (/^-?[\d.]+%$/.test(text)) return Number(text.slice(0, -1)) / 100;
  if (Number.isNaN(Number(text))) throw new Error(`Not a literal: ${written}`);
  return Number(text);
}

/** A grid of literals: {1,2;3,4}, or a single one. */
export function argument(written: string): unknown[][] {
  const text = written.trim();
  if (!text.startsWith("{")) return [[literal(text)]];
  return split(text.slice(1, -1), ";").map((row) => split(row, ",").map(literal));
}

/** The parts between the separators that stand outside quotes and braces. */
function split(text: string, separator: string): string[] {
  const parts = [""];
  let quoted = false;
  let depth = 0;
  for (const letter of text) {
    if (letter === '"') quoted = !quoted;
    if (!quoted) depth += letter === "{" ? 1 : letter === "}" ? -1 : 0;
    if (letter === separator && !quoted && depth === 0) parts.push("");
    else parts[parts.length - 1] += letter;
  }
  return parts;
}
