import { all, create, type MathJsInstance } from "mathjs";
import { describe, expect, it } from "vitest";
import { expressionIn } from "../../../src/catalog/about/working/notation";
import { builtIn, type Value } from "../../../src/catalog/about/working/values";
import { readCatalog } from "../../../src/catalog/read-catalog";
import { registry } from "../../../src/functions/registry";
import { isCellError } from "../../../src/cells/error";
import { literalCall } from "../../functions/literal-call";

/** The functions that answer about Bole itself: there is nothing to work out. */
const ABOUT = ["SOURCE", "WORKING", "VERSION"];

/** The functions of the notation that mathjs does not have, or understands in another way; all else is its own. */
const OURS = [
  "min",
  "max",
  "sum",
  "mean",
  "product",
  "count",
  "steps",
  "item",
  "along",
  "before",
  "squares",
  "deviation",
  "merged",
];
const ROUNDINGS = ["down", "up", "nearest", "halfdown", "decimals"];

const math: MathJsInstance = create(all!);
const scope = {
  ...Object.fromEntries(
    [...OURS, ...ROUNDINGS].map((name) => [name, (...given: unknown[]) => builtIn(name, given.map(plain))]),
  ),
  ...Object.fromEntries(["exp", "sqrt", "abs", "floor", "ceil"].map((name) => [name, itemByItem(name)])),
  ln: itemByItem("log"),
  deg: Math.PI / 180,
  no: false,
};

function itemByItem(name: string) {
  const of = math[name as "exp"] as (value: unknown) => unknown;
  return (value: unknown) =>
    Array.isArray(plain(value)) ? math.map(value as number[], (one: unknown) => of(one) as number) : of(value);
}

const catalog = readCatalog().filter(({ name }) => !ABOUT.includes(name));
let recomputed = 0;

describe("WORKING, for every documented example", () => {
  it.each(catalog)(
    "of $name ends in the function's answer, by steps that anyone can do again",
    ({ name, examples }) => {
      for (const { formula } of examples) {
        const { given } = literalCall(formula);
        const answer = registry[name]!(...given);
        const working = registry["WORKING"]!([[name]], ...given);
        const only = answer[0]![0];
        if (answer.flat().length === 1 && isCellError(only)) {
          expect(working, formula).toEqual([[only]]);
          continue;
        }
        expect(working[0]![0], `${formula}: ${JSON.stringify(working).slice(0, 300)}`).toBe("symbol");
        expectAnswer(working, answer, formula);
        for (const [symbol, , numbers, value] of working)
          if (numbers !== "" && typeof numbers === "string") {
            if (numbers === "with the numbers" || !isStep(working, numbers)) continue;
            expectSame(again(numbers), value, `${formula}: ${String(symbol)} = ${numbers}`);
            recomputed++;
          }
      }
    },
  );

  it("has steps enough to be worth the name", () => {
    console.log(`${recomputed} steps of ${catalog.length} functions done again from their printed text`);
    expect(recomputed).toBeGreaterThan(500);
  });
});

/** The rows before the answer: those of an answered table are no steps. */
function isStep(working: unknown[][], numbers: string): boolean {
  const answer = working.findIndex(([first]) => first === "answer");
  return working.slice(0, answer).some((row) => row[2] === numbers);
}

function expectAnswer(working: unknown[][], answer: unknown[][], formula: string): void {
  if (answer.flat().length === 1) {
    expect(working.at(-1)!.slice(0, 4), formula).toEqual(["answer", "", "", answer[0]![0]]);
    return;
  }
  const last = working.slice(-answer.length).map((row) => row.slice(1, 1 + answer[0]!.length));
  expect(last, formula).toEqual(answer);
}

/** What a person gets who types the printed text into a calculator: mathjs, list by list. */
function again(text: string): unknown {
  expressionIn(text);
  const listwise = text.replace(/(?<![<>!=])=(?!=)/g, "==").replace(/[*/^]/g, " .$&");
  return math.evaluate(listwise, { ...scope });
}

/** To half of the last digit that is shown. */
function expectSame(got: unknown, shown: unknown, what: string): void {
  const value = plain(got);
  if (Array.isArray(value)) {
    const items = expressionIn(String(shown));
    if (items.kind !== "list") throw new Error(`${what}: shown as ${String(shown)}`);
    value.forEach((one: Value, at) =>
      expectSame(one, plain(math.evaluate(itemsIn(String(shown))[at]!)), `${what}, ${at + 1}`),
    );
    return;
  }
  if (typeof shown !== "number") return expect(String(value), what).toBe(String(shown).replaceAll('"', ""));
  const digits = decimalsIn(shown);
  expect(Math.abs((value as number) - shown), `${what} gives ${String(value)}, shown ${shown}`).toBeLessThanOrEqual(
    0.5 * 10 ** -digits + Math.abs(shown) * 1e-12,
  );
}

function decimalsIn(shown: number): number {
  const [, decimals = "", exponent = "0"] = /^-?\d+(?:\.(\d+))?(?:e([+-]\d+))?$/.exec(String(shown))!;
  return decimals.length - Number(exponent);
}

function itemsIn(list: string): string[] {
  return list.slice(1, -1).split(/, (?![^[]*\])/);
}

/** A list as mathjs holds it, as a list of ours. */
function plain(value: unknown): Value {
  if (typeof value === "object" && value !== null && "toArray" in value)
    return (value as { toArray(): Value }).toArray();
  return value as Value;
}
