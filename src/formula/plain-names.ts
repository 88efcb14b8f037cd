import { closingOf } from "./call";
import { functionOf, storedFunction } from "./functions";
import { plainName } from "./plain-name";
import { rewritten, tokensOf, type Token } from "./tokens";

/** A formula with the functions of an add-in spelled otherwise. */
export interface Respelled {
  formula: string;
  /** How many of them were spelled otherwise. */
  calls: number;
  /** Those that stand there and that the add-in does not have, without its name. */
  unknown: string[];
  /** It calls them in a way that cannot be put otherwise, and is left as it is. */
  stuck?: boolean;
}

/** A formula of the file, its functions typed or stored, as a host without dots in names calls them. */
export function withPlainNames(addIn: string, stored: string, isKnown: (name: string) => boolean): Respelled {
  return respelled(
    stored,
    isKnown,
    (token) => functionOf(addIn, token),
    (name) => plainName(addIn, name),
  );
}

/** The way back: `BOLE_EMC` as the file of a workbook for Excel stores it. */
export function withStoredNames(addIn: string, plain: string, isKnown: (name: string) => boolean): Respelled {
  const prefix = plainName(addIn, "");
  const nameIn = ({ kind, text }: Token) =>
    (kind === "function" || kind === "name") && text.toUpperCase().startsWith(prefix)
      ? text.toUpperCase().slice(prefix.length)
      : undefined;
  const inText = formulaInText(plain);
  const way = respelled(inText ?? plain, isKnown, nameIn, (name) => storedFunction(addIn, name));
  if (inText === undefined || (way.calls > 0 && isExcels(tokensOf(inText)))) return way;
  return { formula: plain, calls: 0, unknown: way.unknown, stuck: way.calls > 0 };
}

function respelled(
  formula: string,
  isKnown: (name: string) => boolean,
  nameIn: (token: Token) => string | undefined,
  spelled: (name: string) => string,
): Respelled {
  const unknown: string[] = [];
  let calls = 0;
  const after = rewritten(formula, (token) => {
    const name = nameIn(token);
    if (name === undefined) return token.text;
    if (!isKnown(name)) {
      if (token.kind === "function") unknown.push(name);
      return token.text;
    }
    calls += 1;
    return spelled(name);
  });
  return { formula: after, calls, unknown };
}

/**
 * Where a formula uses functions that Excel does not have, Google Sheets saves it for Excel as a text within a call that
 * fails, with its last value for that case: `IFERROR(__xludf.DUMMYFUNCTION("BOLE_EMC(A1,B1)"),12.5)`.
 */
const IN_A_TEXT = /^IFERROR\(__xludf\.DUMMYFUNCTION\(/i;

/** The formula itself, where all of it was saved in a text. */
function formulaInText(formula: string): string | undefined {
  if (!IN_A_TEXT.test(formula)) return undefined;
  const tokens = tokensOf(formula);
  const text = tokens[4];
  const isWhole = closingOf(tokens, 1) === tokens.length - 1 && tokens[5]?.text === ")";
  if (!isWhole || text?.kind !== "text" || text.unclosed) return undefined;
  return text.text.slice(1, -1).replaceAll('""', '"').replace(/^=/, "");
}

/** Excel has no ARRAYFORMULA and no range without an end, `A2:A`, and would call the whole file damaged. */
function isExcels(tokens: readonly Token[]): boolean {
  return !tokens.some(
    ({ kind, text, unclosed }) =>
      unclosed || (kind === "sign" && text === ":") || (kind === "function" && /^ARRAYFORMULA$/i.test(text)),
  );
}
