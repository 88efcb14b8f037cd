import { spawn } from "node:child_process";
import { describe, expect, it } from "vitest";
import { formulasFrom } from "../../../src/hosts/terminal/lines";

interface Ended {
  code: number | null;
  output: string;
}

/** Runs the terminal calculator as `npm run --silent calc` does, with the lines on its standard input. */
function calc(input: string | Buffer): Promise<Ended> {
  const child = spawn(process.execPath, ["--import", "tsx", "src/hosts/terminal/calc.ts"]);
  const read: Buffer[] = [];
  child.stdout.on("data", (chunk: Buffer) => read.push(chunk));
  child.stdin.end(input);
  return new Promise((resolve) => {
    child.on("close", (code) => resolve({ code, output: Buffer.concat(read).toString("utf8") }));
  });
}

const lines = (output: string): unknown[] =>
  output
    .trimEnd()
    .split("\n")
    .map((line) => JSON.parse(line) as unknown);

describe("the calculator in the terminal", () => {
  it("answers numbers, text, truth values, tables and errors, one line of JSON for each formula", async () => {
    const { code, output } = await calc(
      [
        "=BOLE.KERFLOSS(1.125,0.125)",
        'BOLE.KERFLOSS("5/4",-0.1)',
        "",
        '="8\'"&"6"""',
        "=1=1\r",
        '={1,"a, b";2,"5/4"}',
        "=BOLE.KERFLOSS({1.125;-1},0.125)",
        "=SUM(1,",
        "   ",
        "the oak log",
        '=IFERROR(BOLE.KERFLOSS(1,-1),"½")',
      ].join("\n"),
    );
    expect(code).toBe(0);
    const why = expect.stringMatching(/^thickness: wanted /) as string;
    expect(lines(output)).toEqual([
      { formula: "=BOLE.KERFLOSS(1.125,0.125)", value: 0.1 },
      {
        formula: 'BOLE.KERFLOSS("5/4",-0.1)',
        value: { error: "#VALUE!", message: expect.stringMatching(/^kerf: wanted .* got -0\.1$/) as string },
      },
      { formula: '="8\'"&"6"""', value: "8'6\"" },
      { formula: "=1=1", value: true },
      {
        formula: '={1,"a, b";2,"5/4"}',
        value: [
          [1, "a, b"],
          [2, "5/4"],
        ],
      },
      { formula: "=BOLE.KERFLOSS({1.125;-1},0.125)", value: [[0.1], [{ error: "#VALUE!", message: why }]] },
      {
        formula: "=SUM(1,",
        value: { error: "#ERROR!", message: "Not a formula: A ( is opened but not closed" },
      },
      {
        formula: "the oak log",
        value: { error: "#NAME?", message: expect.stringContaining("Not a formula") as string },
      },
      { formula: '=IFERROR(BOLE.KERFLOSS(1,-1),"½")', value: "½" },
    ]);
  });

  it("answers 5,000 lines in order and loses none in a pipe", async () => {
    const kerfs = Array.from({ length: 5000 }, (_, at) => (at + 1) / 10_000);
    const { code, output } = await calc(kerfs.map((kerf) => `=BOLE.KERFLOSS(1,${kerf})`).join("\n"));
    expect(code).toBe(0);
    const answers = lines(output) as { formula: string; value: number }[];
    expect(answers).toHaveLength(5000);
    for (const [at, { formula, value }] of answers.entries()) {
      const kerf = kerfs[at] ?? 0;
      expect(formula).toBe(`=BOLE.KERFLOSS(1,${kerf})`);
      expect(value).toBeCloseTo(kerf / (1 + kerf), 12);
    }
  });

  it("says nothing when it is asked nothing", async () => {
    expect(await calc("\n\n")).toEqual({ code: 0, output: "" });
  });
});

describe("lines that arrive in pieces", () => {
  async function* pieces(...texts: (string | Uint8Array)[]): AsyncGenerator<Uint8Array> {
    for (const text of texts) yield typeof text === "string" ? new TextEncoder().encode(text) : text;
  }
  const whole = async (...texts: (string | Uint8Array)[]) => {
    const batches: string[][] = [];
    for await (const batch of formulasFrom(pieces(...texts))) batches.push(batch);
    return batches;
  };

  it("are put together", async () => {
    expect(await whole("=1+", "1\n=2", "\n")).toEqual([["=1+1"], ["=2"]]);
  });
  it("count without an end of line too", async () => {
    expect(await whole("=1\n=2")).toEqual([["=1"], ["=2"]]);
  });
  it("may be cut within a letter", async () => {
    const half = new TextEncoder().encode('="½"');
    expect(await whole(half.slice(0, 3), half.slice(3))).toEqual([['="½"']]);
  });
});
