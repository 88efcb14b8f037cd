import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { BY_CODE, byCode } from "../../../src/catalog/about/working/by-code";
import { written, type Expression, type Written } from "../../../src/catalog/about/working/notation";
import { isBuiltIn, type Value } from "../../../src/catalog/about/working/values";
import { worked, type Book } from "../../../src/catalog/about/working/worked";
import { NoAnswer } from "../../../src/math/errors";
import { everyFormula } from "./formulas-written";
import { argumentsFor } from "./given";

/** As near as the formula and the code must come, as a share of the answer. */
const NEARNESS = 1e-12;
const CALLS = 400;
/** So many of the calls must be answered by the code, or the ranges of the test are not the formula's. */
const LEAST_ANSWERED = 40;

const commented = everyFormula();
const formulas = new Map(commented.map(({ name, text }) => [name, written(text)]));
const book: Book = { formula: (name) => formulas.get(name), code: byCode };
const closed = commented.filter(({ name }) => !formulas.get(name)!.unclosed);
const unclosed = commented.filter(({ name }) => formulas.get(name)!.unclosed);

describe("every formula shown is the formula that runs", () => {
  it.each(closed)("$name: $text", async ({ name, path, oneByOne }) => {
    const module = (await import(path)) as Record<string, (...given: unknown[]) => unknown>;
    const code = module[name]!;
    expect(code, `${name} is not exported`).toBeTypeOf("function");
    let answered = 0;
    fc.assert(
      fc.property(argumentsFor(name, argumentsOf(name), leftOutIn(name)), (given) => {
        const answer = answerOf(() => code(...(oneByOne?.map((key) => given[key]) ?? [given])));
        if (answer === undefined) return;
        answered++;
        for (const [symbol, wanted] of figuresIn(name, answer))
          expectNear(worked(name, given as never, startingAt(name, symbol)).answer, wanted, `${symbol} of ${name}`);
      }),
      { numRuns: CALLS, seed: 17 },
    );
    expect(answered, `${name}: so few of the calls had an answer`).toBeGreaterThanOrEqual(LEAST_ANSWERED);
  });

  it("counts the formulas that it computed, and lists the others with the reason", () => {
    const reasons = unclosed.map(({ name }) => `  ${name}, ${formulas.get(name)!.unclosed!.kind}`);
    console.log(`${closed.length} formulas computed; ${unclosed.length} are no closed formula:\n${reasons.join("\n")}`);
    expect(closed.length).toBeGreaterThan(150);
  });

  it("knows each formula by a name of its own", () => {
    expect(formulas.size).toBe(commented.length);
  });

  it("asks only for formulas that are there, and for tables that the code reads", () => {
    const asked = new Set(commented.flatMap(({ name }) => [...callsIn(formulas.get(name)!)]));
    expect(
      [...asked].filter((name) => !(formulas.has(name) && !formulas.get(name)!.unclosed) && !(name in BY_CODE)),
    ).toEqual([]);
  });
});

/** The same book, in which a formula of several figures begins with the one asked for. */
function startingAt(name: string, symbol: string): Book {
  const formula = formulas.get(name)!;
  if (symbol === "") return book;
  const first = formula.steps.filter((step) => step.symbol === symbol);
  const others = formula.steps.filter((step) => step.symbol !== symbol);
  return { ...book, formula: (asked) => (asked === name ? { steps: [...first, ...others] } : formulas.get(asked)) };
}

/** The figures of an answer that the formula has symbols for; the answer itself where it is one figure. */
function figuresIn(name: string, answer: unknown): [string, unknown][] {
  if (typeof answer !== "object" || answer === null) return [["", answer]];
  const symbols = formulas.get(name)!.steps.map(({ symbol }) => symbol);
  const figures = Array.isArray(answer)
    ? symbols.map((symbol): [string, unknown] => [symbol, answer.map((row: Record<string, unknown>) => row[symbol])])
    : Object.entries(flat(answer)).filter(([key]) => symbols.includes(key));
  const found = figures.filter(
    ([, value]) => value !== undefined && !(Array.isArray(value) && value.includes(undefined)),
  );
  expect(found.length, `${name}: no symbol is a figure of the answer`).toBeGreaterThan(0);
  return found;
}

function flat(answer: object): Record<string, unknown> {
  const inner = Object.values(answer).filter((value) => typeof value === "object" && value !== null) as object[];
  return Object.assign({ ...answer }, ...inner) as Record<string, unknown>;
}

function answerOf(call: () => unknown): unknown {
  try {
    const answer = call();
    return typeof answer === "number" && !Number.isFinite(answer) ? undefined : answer;
  } catch (thrown) {
    if (thrown instanceof NoAnswer) return undefined;
    throw thrown;
  }
}

function expectNear(got: Value, wanted: unknown, what: string): void {
  if (Array.isArray(wanted)) {
    expect(got, what).toHaveLength(wanted.length);
    wanted.forEach((one, at) => expectNear((got as readonly Value[])[at], one, `${what} ${at + 1}`));
  } else if (typeof wanted === "number") {
    const size = Math.max(Math.abs(wanted), Math.abs(got as number));
    if (!(Math.abs((got as number) - wanted) <= NEARNESS * size)) expect(got, what).toBe(wanted);
  } else expect(got, what).toBe(wanted);
}

/** The arguments that a formula and those that it asks name, as the code may need them. */
function argumentsOf(name: string, seen = new Set<string>()): string[] {
  if (seen.has(name)) return [];
  seen.add(name);
  const formula = formulas.get(name);
  const { oneByOne = [], keys = [] } = commented.find((one) => one.name === name) ?? {};
  if (!formula) return ["species", ...(name === "boundWoodLbPerFt3" ? ["moisturePercent", "bound"] : [])];
  const symbols = new Set(formula.steps.map(({ symbol }) => symbol));
  const own = [...namesIn(formula)].filter((one) => !symbols.has(one) && !["pi", "deg", "no", "none"].includes(one));
  const asked = callsOf(formula).flatMap(({ name: other, given }) => {
    const handed = new Set(given.map(({ key }) => key));
    return argumentsOf(other, new Set(seen)).filter((key) => !handed.has(key));
  });
  return [...new Set([...own, ...asked, ...(oneByOne ?? []), ...keys])].filter((key) => key !== "what");
}

/** The arguments of which a formula says what holds where they are not given. */
function leftOutIn(name: string): string[] {
  const texts = [name, ...callsIn(formulas.get(name)!)].map(
    (one) => commented.find((each) => each.name === one)?.text ?? "",
  );
  const said = texts.flatMap((text) => [...text.matchAll(/(\w+) or /g)].map(([, argument]) => argument!));
  return [...said, "crossed", "spread", "shared", "coreIn"];
}

function namesIn({ steps }: Written): Set<string> {
  return new Set(steps.flatMap(({ is }) => partsOf(is)).flatMap((part) => (part.kind === "name" ? [part.name] : [])));
}

function callsIn(formula: Written): Set<string> {
  return new Set(callsOf(formula).map(({ name }) => name));
}

/** Where a formula asks another one, or a table. */
function callsOf({ steps }: Written) {
  const parts = steps.flatMap(({ is }) => partsOf(is));
  return parts.flatMap((part) => (part.kind === "call" && !isBuiltIn(part.name) ? [part] : []));
}

function partsOf(expression: Expression): Expression[] {
  const parts: Expression[] = [];
  const visit = (part: unknown): void => {
    if (typeof part !== "object" || part === null) return;
    if ("kind" in part) parts.push(part as Expression);
    Object.values(part).forEach(visit);
  };
  visit(expression);
  return parts;
}
