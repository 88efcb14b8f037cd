import { closingOf } from "./call";
import { rewritten, tokensOf, type Token } from "./tokens";

/**
 * Functions of an add-in are typed `BOLE.EMC(` and stored `_xldudf_BOLE_EMC(`: only so does Excel find the add-in again
 * when the file is opened.
 */
const STORED_FUNCTION = /^_xldudf_([A-Z0-9]+)_([A-Z0-9]+)$/i;
const OF_ANY_ADD_IN = /^(?:_xldudf_|_xll\.)/i;

/** The functions that a formula's words call, in capitals, as often as they call them. */
export function functionsIn(tokens: readonly Token[]): string[] {
  return tokens.flatMap(({ kind, text }) => (kind === "function" ? [text.toUpperCase()] : []));
}

/** The functions of an add-in in a formula, typed or stored, called or handed on to MAP; in capitals, without its name. */
export function functionsOf(addIn: string, formula: string): string[] {
  return tokensOf(formula).flatMap((token) => functionOf(addIn, token) ?? []);
}

/** Whether a formula asks functions of add-ins other than this one, as the file stores them. */
export function asksOtherAddIn(addIn: string, stored: string): boolean {
  // Most formulas ask none, and are not taken apart to find that out.
  if (!stored.includes("_xl")) return false;
  return tokensOf(stored).some(
    (token) => isName(token) && OF_ANY_ADD_IN.test(token.text) && functionOf(addIn, token) === undefined,
  );
}

/** The formula with the functions of an add-in in capitals; some programs write every function small. */
export function inCapitals(addIn: string, formula: string): string {
  return rewritten(formula, (token) => (functionOf(addIn, token) ? token.text.toUpperCase() : token.text));
}

/** `BOLE.EMC` of an add-in as the file stores it, whatever else stands in the formula. */
export function withStoredFunctions(addIn: string, formula: string): string {
  return rewritten(formula, (token) => {
    const name = token.text.includes(".") ? functionOf(addIn, token) : undefined;
    return name ? storedFunction(addIn, name) : token.text;
  });
}

/** `EMC` of an add-in as the file stores it: `_xldudf_BOLE_EMC`. */
export function storedFunction(addIn: string, name: string): string {
  return `_xldudf_${addIn}_${name}`;
}

/** `_xldudf_BOLE_EMC` as a person types it. */
export function typedFunction(name: string): string {
  return name.replace(STORED_FUNCTION, "$1.$2");
}

/**
 * The formula with some calls put otherwise, each given the function's name and what stands in its brackets. Where
 * nothing is put the call stays, and the calls within it are looked at.
 */
export function withCalls(
  formula: string,
  put: (name: string, inside: readonly Token[]) => string | undefined,
): string {
  const tokens = tokensOf(formula);
  const parts: string[] = [];
  for (let at = 0; at < tokens.length; at++) {
    const { kind, text } = tokens[at]!;
    const end = kind === "function" ? closingOf(tokens, at + 1) : -1;
    const instead = end < 0 ? undefined : put(text, tokens.slice(at + 2, end));
    parts.push(instead ?? text);
    if (instead !== undefined) at = end;
  }
  return parts.join("");
}

/** The function of an add-in that a word of a formula names, typed or stored; in capitals, without the add-in's name. */
export function functionOf(addIn: string, token: Token): string | undefined {
  if (!isName(token)) return undefined;
  const typed = typedFunction(token.text).toUpperCase();
  return /^[A-Z0-9]+$/.test(typed.slice(addIn.length + 1)) && typed.startsWith(`${addIn}.`)
    ? typed.slice(addIn.length + 1)
    : undefined;
}

function isName({ kind }: Token): boolean {
  return kind === "function" || kind === "name";
}
