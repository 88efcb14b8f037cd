import { afterAll, beforeAll, describe, expect, it } from "vitest";
import * as bole from "../../src/functions";
import { startEngine, type Answer, type Engine } from "../../src/engine/engine";

/** Functions that show what the engine hands over and how it takes errors. */
const probes = {
  ECHO: (cells?: unknown[][]) => cells ?? [["left out"]],
  REFUSES: (cells: unknown[][]) =>
    cells.map((row) => row.map((cell) => (cell === 0 ? { error: "#N/A", message: "nothing to scale" } : cell))),
  HANDSON: (cells: unknown[][]) =>
    cells.map((row) => row.map((cell) => (cell === "#N/A" ? { error: cell, message: "log: the cell holds #N/A" } : 1))),
  BREAKS: () => {
    throw new Error("no such board");
  },
  NOTANUMBER: () => [[NaN]],
  NOTHING: () => undefined,
  PLAN: () => [
    ["pass", "thickness"],
    [1, "5/4"],
    [2, { error: "#N/A", message: "the log is used up" }],
  ],
};

let engine: Engine;
beforeAll(async () => {
  engine = await startEngine({ ...bole, ...probes });
});
afterAll(() => engine.stop());

const answer = async (formula: string): Promise<Answer> => (await engine.evaluate([formula]))[0] ?? "";

describe("what a function is handed", () => {
  it.each([
    ['=BOLE.ECHO("5/4")', "5/4"],
    ['=BOLE.ECHO("8-6")', "8-6"],
    ['=BOLE.ECHO("12%")', "12%"],
    ['=BOLE.ECHO("8\'6""")', "8'6\""],
    ["=BOLE.ECHO(20)", 20],
    ["=BOLE.ECHO(TRUE)", true],
    ["=BOLE.ECHO()", "left out"],
    ["=BOLE.ECHO(A1)", 0],
    ['=bole.echo("5/4")', "5/4"],
    ['BOLE.ECHO("5/4")', "5/4"],
    ["=BOLE.ECHO(2e1)", 20],
    ["=1+@BOLE.ECHO(2)", 3],
    ["=BOLE.ECHO(@$A$1)", 0],
    ['=BOLE.ECHO("@SUM(1)")', "@SUM(1)"],
    ["=BOLE.ECHO(1.50)", 1.5],
    ["=BOLE.ECHO({.50;-1E-2})", [[0.5], [-0.01]]],
    ["=IF(TRUE,1E+3)", 1000],
    ["=LET(E3,4,E3)", 4],
    ["=ROWS(1:3)", 3],
    ['=BOLE.ECHO("2e1")', "2e1"],
    ['=BOLE.ECHO("1.50")', "1.50"],
  ])("%s stays as typed", async (formula, expected) => expect(await answer(formula)).toEqual(expected));

  it("keeps array constants whole, commas and brackets in quotes included", async () => {
    expect(await answer('=BOLE.ECHO({"a, b; c",1;"5/4","x""}"})')).toEqual([
      ["a, b; c", 1],
      ["5/4", 'x"}'],
    ]);
  });
  it.each([
    '=TRIM(" 5/4 ")',
    '=IF(TRUE,"5/4")',
    '=IFERROR(1/0,"5/4")',
    '=LET(size,"5/4",BOLE.ECHO(size))',
    '=XLOOKUP(1,{1},{"5/4"})',
  ])("%s hands text on as text", async (formula) => expect(await answer(formula)).toBe("5/4"));
});

describe("spreadsheet functions round ours", () => {
  it.each<[string, Answer]>([
    ["=SUM(BOLE.ECHO({1;2;3}))", 6],
    ["=LET(feet,BOLE.ECHO(12),feet*2)", 24],
    ["=FILTER(BOLE.ECHO({1;2;3}),{1;0;1})", [[1], [3]]],
    ["=MAP({1;2},LAMBDA(n,BOLE.ECHO(n)*10))", [[10], [20]]],
    ['=IFERROR(BOLE.REFUSES(0),"none")', "none"],
    ["=IFNA(BOLE.REFUSES(0),7)", 7],
    ['=XLOOKUP("oak",BOLE.ECHO({"elm";"oak"}),{1;2})', 2],
  ])("%s", async (formula, expected) => expect(await answer(formula)).toEqual(expected));
});

describe("errors and their reasons", () => {
  it("shows why a function refused", async () => {
    expect(await answer("=BOLE.REFUSES(0)")).toEqual({ error: "#N/A", message: "nothing to scale" });
  });
  it("shows the reason in its row of a spilled answer", async () => {
    expect(await answer("=BOLE.PLAN()")).toEqual([
      ["pass", "thickness"],
      [1, "5/4"],
      [2, { error: "#N/A", message: "the log is used up" }],
    ]);
  });
  it("shows the reason of the function that refused, not of the one that handed the error on", async () => {
    expect(await answer("=BOLE.HANDSON(BOLE.REFUSES(0))")).toEqual({ error: "#N/A", message: "nothing to scale" });
  });
  it("does not carry a reason over to the next formula", async () => {
    const [, next] = await engine.evaluate(["=BOLE.REFUSES(0)", "=NA()"]);
    expect(next).toMatchObject({ error: "#N/A", message: expect.not.stringContaining("nothing to scale") });
  });
  it("reports a fault of ours as a fault, and goes on", async () => {
    expect(await engine.evaluate(["=BOLE.BREAKS()", "=1+1"])).toEqual([
      { error: "#VALUE!", message: expect.stringContaining("fault in Bole itself") as string },
      2,
    ]);
    expect(await answer("=BOLE.NOTHING()")).toMatchObject({ error: "#VALUE!" });
  });
  it("never answers a number that is none", async () => {
    expect(await answer("=BOLE.NOTANUMBER()")).toMatchObject({ error: "#NUM!" });
    expect(await answer("=BOLE.NOTANUMBER()+1")).toMatchObject({ error: "#NUM!" });
  });
  it("refuses more arguments than a function takes", async () => {
    expect(await answer("=BOLE.ECHO(1,2)")).toEqual({
      error: "#VALUE!",
      message: "BOLE.ECHO: wanted at most one argument, got 2",
    });
  });
  it("names a function that does not exist and the one that was meant", async () => {
    expect(await answer("=BOLE.ECO(1)")).toEqual({
      error: "#NAME?",
      message: "There is no function BOLE.ECO. Did you mean BOLE.ECHO?",
    });
  });
  it.each(["=BOLE.ECHO(", '=BOLE.ECHO("5/4)', "=BOLE.ECHO(1))", "=1+", "=", "={1,2", "the oak log"])(
    "%s is said not to be a formula",
    async (line) => expect(await answer(line)).toMatchObject({ message: expect.stringMatching(/^Not a formula/) }),
  );
  it("says that a comma goes between arguments", async () => {
    expect(await answer("=BOLE.ECHO(1;2)")).toEqual({
      error: "#ERROR!",
      message: "Not a formula: A comma goes between two arguments, not a semicolon",
    });
    expect(await answer("=SUM({1;2})")).toBe(3);
  });
  it.each([
    ["=BOLE.ECHO('Big logs'!A1)", "Big logs"],
    ["=SUM(1,Logs!$B$2:$B$9)", "Logs"],
    ["='Sam''s'!A1", "Sam's"],
    ["=Logs!Total*2", "Logs"],
    ["=[logs.xlsx]Yard!A1", "Yard"],
  ])("%s is refused, because there is no sheet of that name", async (formula, sheet) => {
    const message = `There is no sheet ${sheet} here: write the value itself in its place.`;
    expect(await answer(formula)).toEqual({ error: "#REF!", message });
    expect(await answer("=B2+1")).toBe(1);
  });
  it.each([
    ['=BOLE.ECHO("Logs!A1")', "Logs!A1"],
    ["=IFERROR(#REF!,7)", 7],
  ])("%s names no sheet", async (formula, expected) => expect(await answer(formula)).toBe(expected));
  it.each([
    ["=1/0", "#DIV/0!"],
    ["=SQRT(-1)", "#NUM!"],
  ])("%s shows %s with a word of help", async (formula, error) => {
    expect(await answer(formula)).toEqual({ error, message: expect.any(String) as string });
  });
});

describe("the registry", () => {
  it("is in the engine whole", async () => {
    const names = Object.keys(bole);
    const answers = await engine.evaluate(names.map((name) => `=BOLE.${name}(NA())`));
    for (const [at, given] of answers.entries()) expect(given, names[at]).not.toMatchObject({ error: "#NAME?" });
  });
  it("starts twice side by side", async () => {
    const second = await startEngine(probes);
    expect(await second.evaluate(['=BOLE.ECHO({"a, b"})'])).toEqual(["a, b"]);
    second.stop();
    expect(await answer("=BOLE.ECHO(3)")).toBe(3);
  });
});
