import { argumentPieces } from "./literals";
import { tokensOf } from "./tokens";

/** A call of a function of an add-in within a formula: its name, and its arguments as they stand there. */
export interface Call {
  name: string;
  pieces: string[];
  /** The call as it is written. */
  text: string;
}

/** The calls of an add-in's functions in a formula, the outer ones before those within them. */
export function callsOf(addIn: string, formula: string): Call[] {
  const tokens = tokensOf(formula);
  const prefix = `${addIn}.`.toUpperCase();
  return tokens.flatMap(({ kind, text }, at): Call[] => {
    if (kind !== "function" || !text.toUpperCase().startsWith(prefix)) return [];
    const end = closingOf(
      tokens.map((token) => (token.kind === "sign" ? token.text : "")),
      at + 1,
    );
    const written = tokens
      .slice(at, end + 1)
      .map((token) => token.text)
      .join("");
    return [{ name: text.slice(prefix.length).toUpperCase(), pieces: argumentPieces(written), text: written }];
  });
}

/** Where the bracket that opens at a place closes; the last sign where it is not closed. */
function closingOf(signs: readonly string[], opening: number): number {
  let depth = 0;
  for (let at = opening; at < signs.length; at++) {
    if (signs[at] === "(") depth += 1;
    if (signs[at] === ")" && --depth === 0) return at;
  }
  return signs.length - 1;
}
