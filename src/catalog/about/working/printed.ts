import type { Expression } from "./notation";
import { wordsOf } from "./labels";
import { CONSTANTS, isBuiltIn, type Value } from "./values";

/** As many digits are shown of a number that has no end. */
const MOST_DIGITS = 8;

/** A number that these digits hold whole is shown whole. */
const EXACT_DIGITS = 12;

/** How tightly a sign binds, so that brackets stand where they must and nowhere else. */
const BINDS: Readonly<Record<string, number>> = { or: 1, and: 2, "+": 4, "-": 4, "*": 5, "/": 5, "^": 7 };
const COMPARES = 3;
const TIGHTEST = 9;

/** The value in as many digits as one gets who works on with the digits shown: both round to the same there. */
export function agreedDigits(value: Value, again: Value): Value {
  if (Array.isArray(value)) return value.map((one: Value, at) => agreedDigits(one, (again as readonly Value[])[at]));
  if (typeof value !== "number" || typeof again !== "number") return value;
  const short = Number(value.toPrecision(EXACT_DIGITS));
  if (value === again && Math.abs(value - short) <= Math.abs(value) * 1e-15) return short;
  for (let digits = MOST_DIGITS; digits > 1; digits--)
    if (value.toPrecision(digits) === again.toPrecision(digits)) return Number(value.toPrecision(digits));
  // What cancels out to next to nothing has no digits to agree on, but decimals.
  for (let decimals = MOST_DIGITS; decimals > 0; decimals--)
    if (value.toFixed(decimals) === again.toFixed(decimals)) return Number(value.toFixed(decimals));
  return Number(value.toPrecision(1));
}

/** An expression with numbers for its symbols; of several cases the one that holds, of another formula its answer. */
export function withNumbers(expression: Expression, value: (part: Expression) => Value): string {
  return textOf(expression, (part) => {
    if (part.kind === "cases") return chosen(part, value);
    if (part.kind === "name" && part.name in CONSTANTS) return part.name;
    const isAnswer = part.kind === "name" || part.kind === "part" || (part.kind === "call" && !isBuiltIn(part.name));
    if (isAnswer) return valueText(value(part));
    return part.kind === "two" && part.sign === "or" ? valueText(value(part)) : undefined;
  });
}

function chosen({ cases, otherwise }: Expression & { kind: "cases" }, value: (part: Expression) => Value): string {
  for (const { when, then } of cases) {
    const holds = value(when);
    if (Array.isArray(holds)) return valueText(value({ kind: "cases", cases, otherwise }));
    if (holds) return withNumbers(then, value);
  }
  return withNumbers(otherwise, value);
}

/** The rule of a step in words and symbols; of several cases the one that holds, and why. */
export function ruleText(expression: Expression, value: (part: Expression) => Value): string {
  if (expression.kind !== "cases") return textOf(expression, () => undefined);
  const holds = expression.cases.map(({ when }) => value(when));
  const at = holds.findIndex((one) => one !== undefined && one !== false);
  if (holds.some(Array.isArray)) return textOf(expression, () => undefined);
  const others = expression.cases.map(({ when }) => `not ${textOf(when, () => undefined)}`).join(", ");
  const { then, when } = expression.cases[at] ?? { then: expression.otherwise, when: undefined };
  return `${textOf(then, () => undefined)}, for ${when ? textOf(when, () => undefined) : others}`;
}

/** A value as the notation writes it. */
export function valueText(value: Value): string {
  if (Array.isArray(value)) return `[${value.map(valueText).join(", ")}]`;
  if (typeof value === "number") return value < 0 ? `(${plain(value)})` : plain(value);
  if (typeof value === "string") return `"${value}"`;
  if (typeof value === "object") return String((value as { name?: Value }).name ?? "the table's row");
  return value === undefined ? "none" : String(value);
}

/** Without an exponent, which few read. */
function plain(value: number): string {
  const text = String(value);
  return text.includes("e-") ? value.toFixed(20).replace(/0+$/, "") : text;
}

/** An expression as it is written; `instead` may write a part of it in another way. */
function textOf(expression: Expression, instead: (part: Expression) => string | undefined, around = 0): string {
  const other = instead(expression);
  if (other !== undefined) return expression.kind === "cases" && around > 0 ? `(${other})` : other;
  const text = (part: Expression, binds = 0) => textOf(part, instead, binds);
  switch (expression.kind) {
    case "number":
      return plain(expression.value);
    case "text":
      return `"${expression.value}"`;
    case "list":
      return `[${expression.items.map((item) => text(item)).join(", ")}]`;
    case "minus":
      return `-${text(expression.of, TIGHTEST)}`;
    case "name":
      return wordsOf(expression.name);
    case "part":
      return `${text(expression.of, TIGHTEST)}.${wordsOf(expression.key)}`;
    case "cases":
      return `${expression.cases.map(({ then, when }) => `${text(then)} if ${text(when)}`).join(", ")}, else ${text(expression.otherwise)}`;
    case "call":
      return calledText(expression, text);
    case "two": {
      const binds = BINDS[expression.sign] ?? COMPARES;
      const isPower = expression.sign === "^";
      const sign = isPower ? "^" : ` ${expression.sign} `;
      const whole = `${text(expression.left, isPower ? binds + 1 : binds)}${sign}${text(expression.right, isPower ? binds : binds + 1)}`;
      return binds < around ? `(${whole})` : whole;
    }
  }
}

/** A function of the notation by its name; another formula in words. */
function calledText({ name, given }: Expression & { kind: "call" }, text: (part: Expression) => string): string {
  const own = isBuiltIn(name);
  const parts = given.map(({ key, is }) => `${key === undefined ? "" : `${wordsOf(key)}: `}${text(is)}`).join(", ");
  const words = own ? name : name.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
  return own || parts ? `${words}(${parts})` : words;
}
