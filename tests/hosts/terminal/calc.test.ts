import { spawn } from "node:child_process";
import { openSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { answersTo } from "../../../src/hosts/terminal/answering";
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

  it("answers every line that is made to hurt, and the next ones, in their turn", async () => {
    const asked = [
      "=SUM(A1:XFD1048576)",
      "=A1:XFD1048576",
      `=1${"+1".repeat(4000)}`,
      `=${"(".repeat(4000)}1${")".repeat(4000)}`,
      `=BOLE.SPECIES("${"a".repeat(1_000_000)}")`,
      `=BOLE.SPECIES("${"a".repeat(8000)}")`,
      "=1+1",
    ];
    const { code, output } = await calc(asked.join("\n"));
    expect(code).toBe(0);
    const answers = lines(output) as { formula: string; value: unknown }[];
    expect(answers.map(({ formula }) => formula)).toEqual(asked);
    const refused = (message: string) => ({ error: "#ERROR!", message });
    expect(answers.map(({ value }) => value)).toEqual([
      refused("This points at 17179869184 cells, and all of them are blank here; at most 2097152 are looked at."),
      refused("This points at 17179869184 cells, and all of them are blank here; at most 2097152 are looked at."),
      4001,
      1,
      refused("This formula is 1000017 signs long; a spreadsheet takes at most 8192."),
      { error: "#VALUE!", message: expect.stringContaining("wanted a known name") as string },
      2,
    ]);
  });

  it("says that the answers cannot be written when the disk is full", async () => {
    const disk = openSync("/dev/full", "w");
    const child = spawn(process.execPath, ["--import", "tsx", "src/hosts/terminal/calc.ts"], {
      stdio: ["pipe", disk, "pipe"],
    });
    const said: Buffer[] = [];
    child.stderr!.on("data", (chunk: Buffer) => said.push(chunk));
    child.stdin!.end("=1+1\n");
    const code = await new Promise((resolve) => child.on("close", resolve));
    expect([code, Buffer.concat(said).toString()]).toEqual([1, "The answers cannot be written (ENOSPC).\n"]);
  });

  it("gives a formula up that takes too long, and asks another engine the next one", async () => {
    async function* formulas() {
      yield await Promise.resolve(["=1+1", "=2+2"]);
    }
    const answers: unknown[] = [];
    // No engine starts within a thousandth of a second, so each formula takes too long.
    for await (const answer of answersTo(formulas(), 1)) answers.push(answer);
    const value = { error: "#ERROR!", message: expect.stringContaining("takes longer than 0.001 seconds") as string };
    expect(answers).toEqual([
      { formula: "=1+1", value },
      { formula: "=2+2", value },
    ]);
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
  it("end with any sign of a line's end, CR alone too, also where the two signs of one come apart", async () => {
    expect(await whole("=1\r=2\r\n=3\n=4\r", "\n=5\r")).toEqual([["=1", "=2", "=3"], ["=4"], ["=5"]]);
  });
  it("count without an end of line too", async () => {
    expect(await whole("=1\n=2")).toEqual([["=1"], ["=2"]]);
  });
  it("may be cut within a letter", async () => {
    const half = new TextEncoder().encode('="½"');
    expect(await whole(half.slice(0, 3), half.slice(3))).toEqual([['="½"']]);
  });
});
