import { describe, expect, it } from "vitest";
import { readCatalog } from "../../src/catalog/read-catalog";
import { registry } from "../../src/functions/registry";
import { answerTo, argument } from "./literal-call";

const catalog = readCatalog();

describe("every example in a function's comment", () => {
  for (const { name, examples } of catalog)
    it(`holds for ${name}`, () => {
      for (const { formula, result } of examples) expectAnswer(formula, result);
    });
});

describe("the comments", () => {
  it("describe every function of the registry, each under its own name", () => {
    expect(catalog.map(({ name }) => name).sort()).toEqual(Object.keys(registry).sort());
  });

  it.each(catalog)("of $name say what Excel has room for, and name every argument in order", (entry) => {
    expect(entry.summary).not.toBe("");
    expect(entry.summary.length).toBeLessThan(128);
    expect(entry.returns).not.toBe("");
    expect(entry.params.map(({ name }) => name)).toEqual(registry[entry.name]!.takes.map(({ name }) => name));
    for (const { text } of entry.params) expect(text).not.toBe("");
  });

  it.each(catalog)("of $name include an example that answers and one that does not", ({ params, examples }) => {
    const results = examples.map(({ result }) => result);
    expect(results.some((result) => !result.startsWith("#"))).toBe(true);
    if (params.length > 0) expect(results.some((result) => result.startsWith("#"))).toBe(true);
  });
});

/** An example's number holds to half its last printed digit. */
function expectAnswer(formula: string, result: string): void {
  const answer = answerTo(formula);
  const table = /^a table of (\d+) rows(?:: (.+))?$/.exec(result);
  if (table) return expectTable(formula, answer, Number(table[1]), table[2]?.split("; ") ?? []);
  if (result.startsWith("{")) {
    const wanted = argument(result);
    expect(answer.length, formula).toBe(wanted.length);
    wanted.forEach((row, i) => row.forEach((cell, j) => expectCell(formula, answer[i]![j], String(cell), cell)));
    return;
  }
  expect(answer.length, `${formula} gives ${JSON.stringify(answer).slice(0, 300)}`).toBe(1);
  expectCell(formula, answer[0]![0], result, result.startsWith("#") ? result : argument(result)[0]![0]);
}

/** A long table is said by some of its rows: `total 95.5` is the first figure of the row that begins with total. */
function expectTable(formula: string, answer: unknown[][], rows: number, figures: readonly string[]): void {
  expect(answer.length, `${formula} gives ${JSON.stringify(answer).slice(0, 300)}`).toBe(rows);
  for (const said of figures) {
    const [, name, figure] = /^(.+) (-?[\d.]+)$/.exec(said)!;
    const row = answer.find(([first]) => String(first) === name);
    expect(row, `${formula} has a row ${name}`).toBeDefined();
    expectCell(
      `${formula}, ${name}`,
      row!.slice(1).find((cell) => typeof cell === "number"),
      figure!,
      Number(figure),
    );
  }
}

function expectCell(formula: string, cell: unknown, written: string, wanted: unknown): void {
  if (written.startsWith("#")) {
    expect(cell, formula).toMatchObject({ error: written });
    expect((cell as { message: string }).message, formula).not.toMatch(/fault in Bole/);
  } else if (typeof wanted === "number") {
    const digits = /\.(\d+)$/.exec(written)?.[1]?.length ?? 0;
    expect(typeof cell, `${formula} gives ${JSON.stringify(cell)}`).toBe("number");
    expect(Math.abs((cell as number) - wanted), `${formula} gives ${cell as number}`).toBeLessThanOrEqual(
      0.5 * 10 ** -digits + 1e-9,
    );
  } else expect(cell, formula).toBe(wanted);
}
