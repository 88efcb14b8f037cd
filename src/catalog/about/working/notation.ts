/**
 * The notation of an `@formula`: steps with a semicolon between them, the answer first, each `symbol = expression [unit]`.
 * A step may use the symbols of the others and the arguments by their keys, so `D = diameterIn` ties a symbol to one.
 *
 * Expressions are as on paper, with every sign of multiplication written: `+ - * / ^`, comparisons, `and`, `"words"`,
 * lists `[a, b]`, parts of a record `wood.specificGravity`, and functions. Cases read `a if x < 3, else b`; `a or b` is b
 * where a is not given. A formula of another name is asked with the same arguments, but for those written: `f(lengthFt: 2 * L)`.
 *
 * What is no closed formula says so first: `by table: sentence; steps`, or by search, by dynamic program, in words.
 */
export interface Written {
  /** How the answer is found, where no closed formula gives it. */
  unclosed?: { kind: string; sentence: string };
  steps: Step[];
}

export interface Step {
  symbol: string;
  /** As it is written. */
  text: string;
  unit: string;
  is: Expression;
}

export type Expression =
  | { kind: "number"; value: number }
  | { kind: "text"; value: string }
  | { kind: "name"; name: string }
  | { kind: "list"; items: Expression[] }
  | { kind: "part"; of: Expression; key: string }
  | { kind: "minus"; of: Expression }
  | { kind: "two"; sign: string; left: Expression; right: Expression }
  | { kind: "cases"; cases: { when: Expression; then: Expression }[]; otherwise: Expression }
  | { kind: "call"; name: string; given: { key: string | undefined; is: Expression }[] };

/** The kinds of rule that no closed formula gives. */
const UNCLOSED = /^(by table|by search|by dynamic program|in words): ([^;]*);?/;
const TOKEN =
  /\s*(?:(\d+(?:\.\d+)?(?:e[+-]?\d+)?)|([A-Za-z_][A-Za-z_0-9]*'*)|"([^"]*)"|(<=|>=|!=|[-+*/^()[\],.:<>=]))/y;
/** Looser signs first; those of one line bind alike, from left to right. */
const SIGNS = [["or"], ["and"], ["=", "!=", "<", "<=", ">", ">="], ["+", "-"], ["*", "/"]];

/** A formula as its comment writes it. Throws what is wrong with the notation. */
export function written(text: string): Written {
  const unclosed = UNCLOSED.exec(text);
  const steps = text
    .slice(unclosed?.[0].length ?? 0)
    .split(";")
    .filter((part) => part.trim() !== "")
    .map(stepIn);
  if (steps.length === 0 && !unclosed) throw new Error(`formula without a step: ${text}`);
  return { ...(unclosed && { unclosed: { kind: unclosed[1]!, sentence: unclosed[2]!.trim() } }), steps };
}

function stepIn(part: string): Step {
  const [, symbol, rest] = /^\s*([A-Za-z_][A-Za-z_0-9]*'*)\s*=\s*([^=].*)$/s.exec(part) ?? [];
  if (symbol === undefined || rest === undefined) throw new Error(`wanted symbol = expression, got ${part.trim()}`);
  const [, text = rest.trim(), unit = ""] = /^(.*[^\s=,([])\s+\[([^\]]+)\]\s*$/s.exec(rest) ?? [];
  return { symbol, text: text.replace(/\s+/g, " "), unit, is: expressionIn(text) };
}

/** A single expression. */
export function expressionIn(text: string): Expression {
  const tokens = tokensIn(text);
  let at = 0;
  const next = () => tokens[at];
  const isNext = (sign: string) => next()?.sign === sign;
  const taken = (sign: string) => isNext(sign) && (at++, true);
  const take = (sign: string) => {
    if (!taken(sign)) throw new Error(`wanted ${sign} at word ${at + 1} of ${text}`);
  };

  function whole(): Expression {
    const first = signed(0);
    if (!taken("if")) return first;
    const cases = [{ then: first, when: signed(0) }];
    for (;;) {
      take(",");
      if (taken("else")) return { kind: "cases", cases, otherwise: signed(0) };
      const then = signed(0);
      take("if");
      cases.push({ then, when: signed(0) });
    }
  }
  function signed(level: number): Expression {
    const signs = SIGNS[level];
    if (!signs) return raised();
    let left = signed(level + 1);
    for (let sign = next()?.sign; sign !== undefined && signs.includes(sign); sign = next()?.sign) {
      at++;
      left = { kind: "two", sign, left, right: signed(level + 1) };
    }
    return left;
  }
  function raised(): Expression {
    if (taken("-")) return { kind: "minus", of: raised() };
    const base = parted(single());
    return taken("^") ? { kind: "two", sign: "^", left: base, right: raised() } : base;
  }
  function parted(of: Expression): Expression {
    if (!taken(".")) return of;
    return parted({ kind: "part", of, key: tokens[at++]!.name! });
  }
  function single(): Expression {
    const token = tokens[at++];
    if (token?.number !== undefined) return { kind: "number", value: token.number };
    if (token?.text !== undefined) return { kind: "text", value: token.text };
    if (token?.sign === "(") return closed(whole(), ")");
    if (token?.sign === "[") return { kind: "list", items: listed("]", whole) };
    if (token?.name === undefined) throw new Error(`wanted a value at word ${at} of ${text}`);
    return taken("(")
      ? { kind: "call", name: token.name, given: listed(")", argument) }
      : { kind: "name", name: token.name };
  }
  function argument() {
    const key = tokens[at + 1]?.sign === ":" ? next()!.name : undefined;
    if (key !== undefined) at += 2;
    return { key, is: whole() };
  }
  function closed<T>(inside: T, end: string): T {
    take(end);
    return inside;
  }
  function listed<T>(end: string, item: () => T): T[] {
    const items: T[] = [];
    while (!isNext(end)) {
      items.push(item());
      if (!isNext(end)) take(",");
    }
    return closed(items, end);
  }

  const all = whole();
  if (at < tokens.length) throw new Error(`more than an expression, from word ${at + 1} of ${text}`);
  return all;
}

interface Token {
  number?: number;
  name?: string;
  text?: string;
  sign?: string;
}

function tokensIn(text: string): Token[] {
  const tokens: Token[] = [];
  TOKEN.lastIndex = 0;
  for (let at = 0; text.slice(at).trim() !== ""; at = TOKEN.lastIndex) {
    TOKEN.lastIndex = at;
    const [, number, name, quoted, sign] = TOKEN.exec(text) ?? [];
    if (number !== undefined) tokens.push({ number: Number(number) });
    else if (name !== undefined) tokens.push(/^(?:if|else|and|or)$/.test(name) ? { sign: name } : { name });
    else if (quoted !== undefined) tokens.push({ text: quoted });
    else if (sign !== undefined) tokens.push({ sign });
    else throw new Error(`no sign of the notation: ${text.slice(at)}`);
  }
  return tokens;
}
