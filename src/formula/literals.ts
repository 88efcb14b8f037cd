/** The literals of a formula: numbers, truth values, text in quotes, and array constants of them. */

const NUMBER = /^[-+]?(?:\d+\.?\d*|\.\d+)(?:[eE][-+]?\d+)?$/;
const QUOTED = /^"(?:[^"]|"")*"$/;

/** A number, TRUE, FALSE or quoted text as a formula spells it; undefined for anything else. */
export function literal(piece: string): number | boolean | string | undefined {
  if (NUMBER.test(piece)) return Number(piece);
  if (/^(true|false)$/i.test(piece)) return piece.toLowerCase() === "true";
  return QUOTED.test(piece) ? piece.slice(1, -1).replaceAll('""', '"') : undefined;
}

/** `{1,2;3,"a, b"}` as rows of cells, each as it is spelt. */
export function arrayPieces(constant: string): string[][] {
  const rows = splitOutside(constant.trim().slice(1, -1), ";");
  return rows.map((row) => splitOutside(row, ",").map((cell) => cell.trim()));
}

/** The arguments of a call as they stand in it: `=BOLE.X(20, "a, b")` has two. */
export function argumentPieces(formula: string): string[] {
  const inside = formula.slice(formula.indexOf("(") + 1, formula.lastIndexOf(")"));
  return splitOutside(inside, ",").map((piece) => piece.trim());
}

/** Splits at a character, but not inside quotes or braces. */
function splitOutside(text: string, separator: string): string[] {
  const parts: string[] = text.trim() === "" ? [] : [""];
  let quoted = false;
  let depth = 0;
  for (const character of text) {
    if (character === '"') quoted = !quoted;
    if (!quoted && character === "{") depth += 1;
    if (!quoted && character === "}") depth -= 1;
    if (character === separator && !quoted && depth === 0) parts.push("");
    else if (parts.length > 0) parts[parts.length - 1] += character;
  }
  return parts;
}
