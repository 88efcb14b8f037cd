import { tokensOf, type Token } from "./tokens";

/** What is open at a place of a formula: a call, brackets of its own, or a list of values in braces. */
type Opened = "call" | "brackets" | "braces";

const OPERATOR = /^[-+*/^&=<>:]$/;
const SIGNS_BEFORE_A_VALUE = /^[-+@]$/;
const TWO_SIGN_OPERATORS = ["<=", ">=", "<>"];

/**
 * Whether values and operators of a formula stand in an order that a spreadsheet can read. One wrong formula makes a whole
 * file a damaged one, so what is not known to be right is not.
 */
export function isWellFormed(formula: string): boolean {
  const open: Opened[] = [];
  let wantsValue = true;
  const tokens = tokensOf(formula.replace(/^=/, "")).filter(({ kind }) => kind !== "space");
  for (const [at, token] of tokens.entries()) {
    if (token.unclosed) return false;
    const { kind, text } = token;
    const before = tokens[at - 1];
    if (kind === "bracket") {
      // What is asked of a table stands right behind its name.
      if (before?.kind !== "name") return false;
    } else if (kind !== "sign") {
      if (!wantsValue) return false;
      wantsValue = kind === "function" || kind === "sheet";
      if (kind === "sheet" && !["cells", "name", "error"].includes(tokens[at + 1]?.kind ?? "")) return false;
    } else if (text === "(" || text === "{") {
      if (!wantsValue) return false;
      open.push(text === "{" ? "braces" : before?.kind === "function" ? "call" : "brackets");
    } else if (text === ")" || text === "}") {
      const opened = open.pop();
      if (opened === undefined || (opened === "braces") !== (text === "}")) return false;
      // An argument may be left out; a value in brackets may not.
      if (wantsValue && opened !== "call") return false;
      wantsValue = false;
    } else if (text === "," || text === ";") {
      const opened = open.at(-1);
      if (opened === undefined || opened === "brackets" || (text === ";" && opened !== "braces")) return false;
      if (wantsValue && opened === "braces") return false;
      wantsValue = true;
    } else if (!isSign(token, before, wantsValue)) return false;
    else wantsValue = text !== "%";
  }
  return !wantsValue && open.length === 0;
}

/** A sign that counts, at a place where it may stand. */
function isSign({ text }: Token, before: Token | undefined, wantsValue: boolean): boolean {
  if (!wantsValue) return text === "%" || OPERATOR.test(text);
  return SIGNS_BEFORE_A_VALUE.test(text) || TWO_SIGN_OPERATORS.includes(`${before?.text ?? ""}${text}`);
}
