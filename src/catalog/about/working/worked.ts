import type { Expression, Step, Written } from "./notation";
import { between, builtIn, CONSTANTS, isBuiltIn, partOf, type Value } from "./values";
import { agreedDigits, ruleText, withNumbers } from "./printed";

/** A line of a working: what a symbol is, by which rule, and what it comes to. */
export interface Line {
  /** The formula that it belongs to. */
  formula: string;
  /** Whether it is what the formula answers. */
  isAnswer: boolean;
  /** The argument that it reads as it is. */
  reads?: string;
  symbol: string;
  rule: string;
  numbers: string;
  value: Value;
  unit: string;
}

/** What a formula answers, the same with every number cut to the digits that are shown, and how it came about. */
export interface Worked {
  answer: Value;
  shown: Value;
  lines: Line[];
  /** Every symbol that was needed. */
  symbols: ReadonlyMap<string, Value>;
}

/** Where formulas are found, and the code of those that no closed formula gives. */
export interface Book {
  formula(name: string): Written | undefined;
  code(name: string, given: Given): Value;
}

export type Given = Readonly<Record<string, Value>>;

/** What a name or a call is worth, in full or in the digits shown. */
interface Scope {
  name(name: string): Value;
  call(call: Expression & { kind: "call" }): Value;
}

/** Works a formula out with arguments, step by step: a step is worked out when another asks for its symbol. */
export function worked(name: string, given: Given, book: Book): Worked {
  const formula = book.formula(name);
  if (!formula) {
    const answer = book.code(name, given);
    return { answer, shown: answer, lines: [], symbols: new Map() };
  }
  const steps = new Map(formula.steps.map((step) => [step.symbol, step]));
  const full = new Map<string, Value>();
  const shown = new Map<string, Value>();
  const calls = new Map<Expression, Worked>();
  const lines: Line[] = [];
  const told = new Set<string>();
  const begun = new Set<string>();

  const first = formula.steps[0]?.symbol ?? "";
  const line = (symbol: string): Line => ({
    formula: name,
    isAnswer: symbol === first && !formula.unclosed,
    symbol,
    rule: "",
    numbers: "",
    value: undefined,
    unit: "",
  });

  const inFull: Scope = {
    name: (symbol) => {
      const step = steps.get(symbol);
      // A step may bear the name of the argument that it makes something of.
      if (!step || (begun.has(symbol) && !full.has(symbol)))
        return symbol in CONSTANTS ? CONSTANTS[symbol] : read(symbol);
      if (!full.has(symbol)) work(step);
      return full.get(symbol);
    },
    call: (call) => calledIn(call).answer,
  };
  const asShown: Scope = {
    name: (symbol) => (inFull.name(symbol), shown.has(symbol) ? shown.get(symbol) : inFull.name(symbol)),
    call: (call) => calledIn(call).shown,
  };

  /** An argument that a step uses by its own name is told in a line of its own. */
  function read(argument: string): Value {
    const isTied = formula!.steps.some(({ is }) => is.kind === "name" && is.name === argument);
    if (!told.has(argument) && !isTied && given[argument] !== undefined)
      lines.push({ ...line(argument), reads: argument, value: given[argument] });
    told.add(argument);
    return given[argument];
  }

  function calledIn(call: Expression & { kind: "call" }): Worked {
    let done = calls.get(call);
    if (!done) {
      const own = call.given.map(({ key, is }) => [key ?? "", valueOf(is, inFull)] as const);
      done = forEach(call.name, given, own, book);
      calls.set(call, done);
      lines.push(...done.lines);
    }
    return done;
  }

  function work(step: Step): void {
    begun.add(step.symbol);
    const value = valueOf(step.is, inFull);
    full.set(step.symbol, value);
    const digits = agreedDigits(value, valueOf(step.is, asShown));
    shown.set(step.symbol, digits);
    if (value === undefined) return;
    const { symbol, unit } = step;
    const rule = ruleText(step.is, (part) => valueOf(part, inFull));
    const tied = step.is.kind === "name" && step.is.name in given ? { reads: step.is.name } : undefined;
    const isReckoned = ["number", "boolean"].includes(typeof value) || Array.isArray(value);
    const numbers = tied || !isReckoned ? "" : withNumbers(step.is, (part) => valueOf(part, asShown));
    lines.push({ ...line(symbol), ...tied, rule, numbers, value: digits, unit });
  }

  for (const { symbol } of answersOf(formula)) inFull.name(symbol);
  const answer = formula.unclosed ? book.code(name, given) : full.get(first);
  if (formula.unclosed && answer !== undefined)
    lines.push({ ...line("read"), rule: formula.unclosed.sentence, value: answer });
  return { answer, shown: formula.unclosed ? answer : shown.get(first), lines, symbols: full };
}

/** The steps that no other step asks for. */
export function answersOf({ steps }: Written): Step[] {
  const used = new Set<string>();
  const visit = (part: unknown, own: string): void => {
    if (typeof part !== "object" || part === null) return;
    if ("kind" in part && part.kind === "name" && "name" in part && part.name !== own) used.add(part.name as string);
    Object.values(part).forEach((inner) => visit(inner, own));
  };
  steps.forEach(({ symbol, is }) => visit(is, symbol));
  return steps.filter(({ symbol }, at) => at === 0 || !used.has(symbol));
}

/** Another formula, asked with the same arguments but for its own; where one of those is a list, once for each item. */
function forEach(name: string, given: Given, own: (readonly [string, Value])[], book: Book): Worked {
  const long = own.find(([, value]) => Array.isArray(value));
  if (!long) return worked(name, { ...given, ...Object.fromEntries(own) }, book);
  const each = (long[1] as readonly Value[]).map((_, at) =>
    forEach(
      name,
      given,
      own.map(([key, value]) => [key, Array.isArray(value) ? (value[at] as Value) : value]),
      book,
    ),
  );
  return {
    answer: each.map(({ answer }) => answer),
    shown: each.map(({ shown }) => shown),
    lines: each.flatMap(({ lines }) => lines),
    symbols: new Map(),
  };
}

function valueOf(expression: Expression, scope: Scope): Value {
  const value = (part: Expression) => valueOf(part, scope);
  switch (expression.kind) {
    case "number":
    case "text":
      return expression.value;
    case "name":
      return scope.name(expression.name);
    case "list":
      return expression.items.map(value);
    case "part":
      return partOf(value(expression.of), expression.key);
    case "minus":
      return between("*", -1, value(expression.of));
    case "two":
      if (expression.sign === "or") return value(expression.left) ?? value(expression.right);
      if (expression.sign === "and" && value(expression.left) === false) return false;
      return between(expression.sign, value(expression.left), value(expression.right));
    case "cases":
      return caseOf(expression, value);
    case "call":
      if (isBuiltIn(expression.name))
        return builtIn(
          expression.name,
          expression.given.map(({ is }) => value(is)),
        );
      return scope.call(expression);
  }
}

/** The first case that holds. Of a list, each item goes by its own case. */
function caseOf({ cases, otherwise }: Expression & { kind: "cases" }, value: (part: Expression) => Value): Value {
  const [first, ...others] = cases;
  if (!first) return value(otherwise);
  const holds = value(first.when);
  if (Array.isArray(holds))
    return eachByItsCase(
      holds as Value[],
      value(first.then),
      caseOf({ kind: "cases", cases: others, otherwise }, value),
    );
  return holds ? value(first.then) : caseOf({ kind: "cases", cases: others, otherwise }, value);
}

function eachByItsCase(holds: readonly Value[], then: Value, otherwise: Value): Value {
  const at = (list: Value, place: number) => (Array.isArray(list) ? (list[place] as Value) : list);
  return holds.map((one, place) => at(one ? then : otherwise, place));
}
