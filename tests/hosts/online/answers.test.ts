import { describe, expect, it } from "vitest";
import { readCatalog } from "../../../src/catalog/read-catalog";
import { serialOf } from "../../../src/xlsx/serial";
import { answerTo, literalCall } from "../../functions/literal-call";
import { asked, call, day } from "./online-sheet";

/** A grid as that host hands it over: one cell bare, a blank cell as empty text. */
function asHanded(cells: unknown[][]): unknown {
  const rows = cells.map((row) => row.map((cell) => cell ?? ""));
  return rows.length === 1 && rows[0]!.length === 1 ? rows[0]![0] : rows;
}

/** An answer of the registry as a person should see it there. */
function asSeen(answer: unknown[][]): unknown {
  const rows = answer.map((row) =>
    row.map((cell) => {
      if (typeof cell !== "object" || cell === null) return cell ?? "";
      const { error, message } = cell as { error: string; message: string };
      return `${error}: ${message}`;
    }),
  );
  return rows.length === 1 && rows[0]!.length === 1 ? rows[0]![0] : rows;
}

describe("the online sheet", () => {
  it("answers every documented example as the functions do in Excel", () => {
    const catalog = readCatalog();
    expect(catalog.length).toBeGreaterThan(100);
    for (const { examples } of catalog)
      for (const { formula } of examples) {
        const { name, given } = literalCall(formula);
        expect(call(`BOLE_${name}`, ...given.map(asHanded)), formula).toEqual(asSeen(answerTo(formula)));
      }
  });

  it("tells its version, its sources under either spelling of a name, and the steps behind an answer", () => {
    expect(call("BOLE_VERSION")).toMatch(/^Bole \d+\.\d+\.\d+$/);
    expect(call("BOLE_SOURCE", "BOLE_KERFLOSS")).toEqual(call("BOLE_SOURCE", "KERFLOSS"));
    expect(call("BOLE_SOURCE", "KERFLOSS")).toHaveLength(2);
    expect(call("BOLE_WORKING", "LOGSCALE", 24, 12, "Doyle")).toEqual(
      asSeen(answerTo('=BOLE.WORKING("LOGSCALE", 24, 12, "Doyle")')),
    );
  });
});

describe("the cells that it hands over", () => {
  it("blank ones, left-out ones and rows that nobody has filled in", () => {
    expect(call("BOLE_LOGSCALE", 20, 12, "Doyle", "")).toBe(192);
    expect(call("BOLE_LOGSCALE", 20, 12, "Doyle", undefined)).toBe(192);
    expect(call("BOLE_LOGSCALE", 20, 16, "", "table")).toBe(290);
    expect(call("BOLE_LOGSCALE", 20, 16, undefined, "table")).toBe(290);
    expect(call("BOLE_LOGSCALE", "", "", "Doyle")).toBe(0);
    expect(call("BOLE_LOGSCALE", 20, "", "Doyle")).toMatch(/^#VALUE!: length: wanted a value .* got a blank$/);
    expect(call("BOLE_LOGSCALE")).toBe("#VALUE!: arguments: wanted diameter, length, got none");
  });

  it("a day where inches are wanted is refused as in Excel", () => {
    const [[excels]] = answerTo(`=BOLE.MEASURE(${serialOf(new Date(Date.UTC(2026, 7, 6)))})`) as [[object]];
    expect(excels).toMatchObject({ error: "#VALUE!", message: expect.stringContaining("8-6") as string });
    expect(call("BOLE_MEASURE", day(2026, 8, 6))).toBe(asSeen([[excels]]));
    expect(call("BOLE_MEASURE", new Date(2026, 7, 6))).toBe(asSeen([[excels]]));
    expect(call("BOLE_LOGSCALE", [[day(2026, 5, 4)], [20]], 12, "Doyle")).toEqual([
      [expect.stringMatching(/^#VALUE!: diameter: .*a date/)],
      [192],
    ]);
  });

  it("a time, or a day of another age, is refused and not taken for a size", () => {
    const refused = (what: string) => new RegExp(`^#VALUE!: (?:thickness|text): wanted .* got "${what}"$`);
    expect(call("BOLE_KERFLOSS", new Date(1899, 11, 30, 8, 6), 0.125)).toMatch(refused("a time of day"));
    expect(call("BOLE_KERFLOSS", day(1925, 3, 1), 0.125)).toMatch(refused("a day before 1930 or after 2050"));
  });

  it("days where days are wanted count as their numbers", () => {
    const { name, given } = literalCall(
      readCatalog()
        .find((entry) => entry.name === "DRYFORECAST")!
        .examples.map(({ formula }) => formula)[0]!,
    );
    const from = serialOf(new Date(Date.UTC(2026, 2, 1)));
    const [days, ...others] = given;
    const numbers = days!.map((row) => row.map((cell) => from + Number(cell)));
    const dates = days!.map((row) => row.map((cell) => day(2026, 3, 1 + Number(cell))));
    const rest = others.map(asHanded);
    expect(call(`BOLE_${name}`, dates, ...rest)).toEqual(call(`BOLE_${name}`, numbers, ...rest));
    const cells = (call(`BOLE_${name}`, dates, ...rest) as unknown[][]).flat();
    expect(cells.some((cell) => typeof cell === "number" && cell > from)).toBe(true);
  });

  it("a column is answered whole, a bad row in words", () => {
    expect(call("BOLE_LOGSCALE", [[20], ["a log"], [""], [3], [24]], 12, "Doyle")).toEqual([
      [192],
      [expect.stringMatching(/^#VALUE!: diameter: .*"a log"/)],
      [0],
      [expect.stringMatching(/^#N\/A: .*got 3/)],
      [300],
    ]);
  });

  it("an error handed on counts as the error it is: the host's own, and our own words", () => {
    const refused = call("BOLE_LOGSCALE", 3, 12, "Doyle");
    expect(refused).toMatch(/^#N\/A: /);
    expect(call("BOLE_KERFLOSS", [["#REF!"], [refused], ["#ERROR!"], [1]], 0.125)).toEqual([
      ["#REF!: thickness: the cell holds #REF!"],
      ["#N/A: thickness: the cell holds #N/A"],
      ["#VALUE!: thickness: the cell holds #VALUE!"],
      [0.125 / 1.125],
    ]);
    expect(call("BOLE_KERFLOSS", "#4 oak", 0.125)).toMatch(/^#VALUE!: thickness: wanted .* got "#4 oak"$/);
  });

  it("a refusal that is the whole answer is an error of the cell, so that no total passes over it", () => {
    expect(() => asked("BOLE_LOGSCALE", 3, 12, "Doyle")).toThrow(/^#N\/A: /);
    expect(() => asked("BOLE_LOGSCALE", [["a log"]], 12, "Doyle")).toThrow(/^#VALUE!: diameter: /);
    expect(asked("BOLE_LOGSCALE", [[3], [24]], 12, "Doyle")).toEqual([[expect.stringMatching(/^#N\/A: /)], [300]]);
  });

  it("more arguments than a function takes are refused, not dropped", () => {
    expect(call("BOLE_KERFLOSS", 1, 0.125, 7)).toBe("#VALUE!: BOLE_KERFLOSS: wanted at most 2 arguments, got 3");
  });

  it("a column of 1,000 rows is one call with 1,000 answers", () => {
    const diameters = Array.from({ length: 1000 }, (_, at) => [8 + at / 50]);
    const answers = call("BOLE_LOGSCALE", diameters, 12, "Doyle") as number[][];
    expect(answers).toHaveLength(1000);
    for (const [at, [answer]] of answers.entries()) expect(answer).toBeCloseTo(((8 + at / 50 - 4) / 4) ** 2 * 12, 9);
  });
});
