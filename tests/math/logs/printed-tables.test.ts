import { readFileSync } from "node:fs";
import { afterAll, describe, expect, it } from "vitest";
import { NoAnswer } from "../../../src/math/errors";
import { breretonVolume } from "../../../src/math/logs/brereton";
import { huberVolume, smalianVolume } from "../../../src/math/logs/cubic";
import { doyleBoardFeet, doyleTableBoardFeet } from "../../../src/math/logs/doyle";
import { gostCubicMeters } from "../../../src/math/logs/gost";
import { GOST_2708_75 } from "../../../src/math/logs/gost.table";
import { hoppusVolume } from "../../../src/math/logs/hoppus";
import { jasCubicMeters } from "../../../src/math/logs/jas";
import {
  internationalQuarterBoardFeet,
  internationalQuarterTableBoardFeet,
} from "../../../src/math/logs/international";
import { overrunPercent } from "../../../src/math/logs/net-scale";
import { scalingDiameterIn } from "../../../src/math/logs/scaling-diameter";
import { scribnerBoardFeet } from "../../../src/math/logs/scribner";
import { scribnerDecimalCBoardFeet } from "../../../src/math/logs/scribner-decimal-c";
import { CM_PER_IN, M_PER_FT } from "../../../src/math/units";
import { rowsOf } from "../../csv";

interface Cell {
  at: string;
  diameter: number;
  length: number;
  printed: number;
}

/** Every printed value that is held against the formulas here is counted once; the last line says how many. */
let printedValues = 0;
afterAll(() => console.log(`Log rules and volumes: ${printedValues} printed values checked`));

describe("Doyle", () => {
  it("gives every cell of the modern printed table, exact halves up", () => {
    const cells = cellsOf("logs/doyle_even_inch_modern.csv", "bf");
    expect(missesOf(cells, doyleTableBoardFeet)).toEqual({});
    said("doyle.ts", `${cells.length} of ${cells.length} cells of the modern Doyle table`);
  });

  /** Chase as read, where it is not within half a board foot of the rule: read wrong by the scanner, or misprinted. */
  const CHASE_IS_OFF: Record<string, string> = {
    "10 x 32": "73 for 72: the two neighbors step by 4.5, this one by 5; misprint or misread",
    "11 x 24": "71 for 73.5: a 4 read as 1, or misprint",
    "19 x 28": "391 for 393.75: a 4 read as 1",
    "22 x 32": "618 for 648: a 4 read as 1",
    "30 x 36": "1531 for 1521: misprint or misread",
    "31 x 22": "1003 for 1002.375: rounded up by mistake",
    "34 x 36": "3025 for 2025: a 2 read as 3",
    "35 x 26": "1563 for 1561.625: misprint",
    "35 x 34": "2012 for 2042.125: a 4 read as 1",
  };

  it("gives every readable cell of Chase 1913, exact halves up or down, but for nine misprints or misreadings", () => {
    const rows = rowsOf("logs/doyle_chase1913.csv");
    expect(rows.filter(({ flag }) => flag === "UNREADABLE_OCR")).toHaveLength(
      rows.filter(({ bf }) => bf === "").length,
    );
    const cells = cellsOf("logs/doyle_chase1913.csv", "bf");
    const off = cells.filter(({ diameter, length, printed }) => {
      const exact = doyleBoardFeet({ diameterIn: diameter, lengthFt: length });
      return Math.abs(printed - exact) > 0.5;
    });
    printedValues += cells.length;
    expect(off.map(({ at }) => at)).toEqual(Object.keys(CHASE_IS_OFF));
    said("doyle.ts", `${cells.length - off.length} of ${cells.length} readable cells of Chase 1913`);
  });

  it("adds up a small load as a printed lesson does, 790 rounded by its author", () => {
    // E. Wengert, Value-Added Processing, 2001: five logs 16 in by 16 ft and one 16 in by 8 ft; the rule gives 792
    printedValues++;
    const load = 5 * doyleBoardFeet({ diameterIn: 16, lengthFt: 16 }) + doyleBoardFeet({ diameterIn: 16, lengthFt: 8 });
    expect(load).toBe(792);
    expect(Math.round(load / 10) * 10).toBe(790);
  });
});

describe("International 1/4", () => {
  /** Cells that print 5 more than the statute's formula; the constant 0.905 would explain the last one only. */
  const PRINTED_HIGHER: Record<string, string> = {
    "15 x 16": "160 for 157.28: printed high",
    "17 x 14": "180 for 177.37: printed high",
    "21 x 8": "155 for 152.489: a tie broken by the rounder constant 0.905 (152.53)",
  };

  it("gives every cell of Wengert's table to the nearest 5, but for three that are printed 5 higher", () => {
    const cells = cellsOf("logs/international_quarter_wengert2001.csv", "bf");
    const misses = missesOf(cells, internationalQuarterTableBoardFeet);
    expect(Object.keys(misses)).toEqual(Object.keys(PRINTED_HIGHER));
    for (const miss of Object.values(misses)) expect(miss.printed - miss.answered).toBe(5);
    said("international.ts", `${cells.length - 3} of ${cells.length} cells of Wengert's International 1/4 table`);
    const exact = internationalQuarterBoardFeet({ diameterIn: 21, lengthFt: 8 });
    expect(exact).toBeCloseTo(152.489, 3);
  });
});

describe("Scribner Decimal C", () => {
  const cells = cellsOf("logs/scribner_decimal_c_wengert2001.csv", "bf");

  it("gives every cell of Wengert's table", () => {
    expect(missesOf(cells, scribnerDecimalCBoardFeet)).toEqual({});
    said("scribner-decimal-c.ts", `${cells.length} of ${cells.length} cells of Wengert's Scribner Decimal C table`);
  });

  it("agrees with the Forest Service's 6 in by 8 ft, and differs on 7 in by 8 ft and 30 in by 16 ft", () => {
    // Bailey 1911: 6- and 8-ft logs of 6 and 7 in are 0.5 (5 bf); a 30-inch 16-foot log is 66 (660 bf)
    printedValues += 3;
    expect(scribnerDecimalCBoardFeet({ diameterIn: 6, lengthFt: 8 })).toBe(5);
    expect(scribnerDecimalCBoardFeet({ diameterIn: 7, lengthFt: 8 })).toBe(10); // Bailey: 5; another edition
    expect(() => scribnerDecimalCBoardFeet({ diameterIn: 30, lengthFt: 16 })).toThrow(NoAnswer); // one lone cell of a table not seen
    expect(scribnerBoardFeet({ diameterIn: 30, lengthFt: 16 })).toBe(647); // and the formula does not give the 660
  });

  it("is within one unit of the formula, which is no substitute: 32 of 90 cells are a unit off", () => {
    const off = cells.filter(({ diameter, length, printed }) => {
      const formula = scribnerBoardFeet({ diameterIn: diameter, lengthFt: length });
      expect(Math.abs(printed - formula)).toBeLessThan(15);
      return Math.floor(formula / 10 + 0.5) * 10 !== printed;
    });
    said("scribner.ts", `${cells.length - off.length} of ${cells.length} cells of Wengert's Scribner Decimal C table`);
  });
});

describe("GOST 2708-75", () => {
  const rows = rowsOf("logs/gost_2708_75_table.csv");
  const cells = cellsOf("logs/gost_2708_75_table.csv", "volume_m3", "top_diameter_cm", "length_m");
  const oddOnes = new Set(rows.flatMap((row, i) => (row.status!.startsWith("interpolated") ? [i] : [])));
  const inStandard = cells.filter(({ at }) => !oddOnes.has(rows.findIndex((row) => keyOf(row) === at)));

  it("gives every cell that stands in the reprints", () => {
    expect(missesOf(inStandard, ({ diameterIn, lengthFt }) => gostCubicMeters(metric(diameterIn, lengthFt)))).toEqual(
      {},
    );
    const witnessed = rows.filter(({ status }) => status === "ok").length;
    said(
      "gost.ts",
      `${inStandard.length} of ${inStandard.length} cells seen (${witnessed} of them in two reprints or more)`,
    );
    expect(GOST_2708_75.flatMap(({ volumes }) => volumes)).toHaveLength(inStandard.length);
  });

  it("refuses the one cell on which reprints differ", () => {
    const conflicts = rows.filter(({ status }) => status!.startsWith("conflict"));
    expect(conflicts.map(keyOf)).toEqual(["36 x 9.0"]);
    printedValues += conflicts.length;
    expect(() => gostCubicMeters(metric(36, 9))).toThrow("1.18 and 1.13");
  });

  it("leaves out the odd diameters from 15 cm: a reprinter's means of their even neighbors", () => {
    const printed = new Map(inStandard.map((cell) => [`${cell.diameter} x ${cell.length}`, cell.printed]));
    const odd = cells.filter((cell) => !inStandard.includes(cell));
    expect(odd).toHaveLength(88);
    printedValues += odd.length;
    for (const { diameter, length, printed: volume } of odd) {
      const mean = (printed.get(`${diameter - 1} x ${length}`)! + printed.get(`${diameter + 1} x ${length}`)!) / 2;
      // the reprinter cuts the third decimal now and then instead of rounding it
      expect(Math.abs(mean - volume), `${diameter} x ${length}`).toBeLessThanOrEqual(0.00051);
    }
  });

  function keyOf(row: Record<string, string>): string {
    return `${row.top_diameter_cm} x ${row.length_m}`;
  }
});

describe("published worked figures", () => {
  const figures = rowsOf("logs/cubic_and_misc_worked_examples.csv");
  const answers: Record<string, (inputs: string) => [answer: number, tolerance: number]> = {
    // printed with 0.785 for pi / 4 = 0.7854, so a twentieth of a percent is allowed
    huber: () => [huberVolume({ middleIn: 40 / CM_PER_IN, lengthFt: 10 / M_PER_FT, unit: "m3" }), 1.256 * 0.0006],
    smalian: () => [
      smalianVolume({ smallIn: 12 / CM_PER_IN, largeIn: 20 / CM_PER_IN, lengthFt: 6 / M_PER_FT, unit: "m3" }),
      0.0005,
    ],
    brereton_metric: () => [
      breretonVolume({ smallIn: 60 / CM_PER_IN, largeIn: 60 / CM_PER_IN, lengthFt: 12 / M_PER_FT, unit: "m3" }),
      0.0005,
    ],
    // the whole meters that the taper came from, worked back from the volume of a 60-cm log
    jas_under_6m: () => {
      const m3 = jasCubicMeters({ diameterIn: 60 / CM_PER_IN, lengthFt: 7.6 / M_PER_FT });
      return [2 * (Math.sqrt((m3 * 10_000) / 7.6) - 60) + 4, 0.02]; // V has three decimals
    },
    doyle: () => [doyleBoardFeet({ diameterIn: 20, lengthFt: 10 }), 0],
    // a quarter girth of 12 in over 1 ft is 1 hoppus foot
    hoppus_m3: () => [1 / hoppusVolume({ girthIn: 48, lengthFt: 1, unit: "m3" }), 5e-7],
    hoppus_ft: (inputs) =>
      inputs.endsWith("m3")
        ? [hoppusVolume({ girthIn: 48, lengthFt: 1, unit: "m3" }), 0.00001] // printed 0.03605, cut from 0.036054
        : [hoppusVolume({ girthIn: 48, lengthFt: 1, unit: "ft3" }), 0.0005],
  };

  it.each(figures)("$rule: $inputs is $published ($source)", ({ rule, inputs, published }) => {
    const [answer, tolerance] = answers[rule!]!(inputs!);
    printedValues++;
    expect(Math.abs(answer - Number(published))).toBeLessThanOrEqual(tolerance);
  });

  it.each([
    [145, 100, 45, "Fahey and Martin 1975, recovery ratio 145 %"],
    [123, 100, 23, "Fahey and Martin 1975, recovery ratio 123 %"],
    [201163, 209910, -4.2, "Grantham 1953, tally 201,163 bf against 209,910 bf"],
    [150, 100, 50, "Black Hills study: 150 % recovery is 50 % overrun"],
  ])("overrun of %d sawn on %d scaled is %d percent (%s)", (sawnBf, scaledBf, percent) => {
    printedValues++;
    expect(Math.abs(overrunPercent({ sawnBf, scaledBf }) - percent)).toBeLessThan(0.05);
  });

  it("halves 8 and 13 to 10, as the Idaho contest rules do", () => {
    printedValues++;
    expect(scalingDiameterIn({ diametersIn: [8, 13], rounding: "nearest" })).toBe(10);
  });
});

/** The cells of a check table that carry a value. */
function cellsOf(file: string, value: string, diameter = "diameter_in", length = "length_ft"): Cell[] {
  return rowsOf(file)
    .filter((row) => row[value] !== "")
    .map((row) => ({
      at: `${row[diameter]} x ${row[length]}`,
      diameter: Number(row[diameter]),
      length: Number(row[length]),
      printed: Number(row[value]),
    }));
}

/** Where the answers are not the printed ones, exactly. */
function missesOf(cells: Cell[], answer: (log: { diameterIn: number; lengthFt: number }) => number) {
  printedValues += cells.length;
  const misses: Record<string, { printed: number; answered: number }> = {};
  for (const { at, diameter, length, printed } of cells) {
    const answered = answer({ diameterIn: diameter, lengthFt: length });
    if (answered !== printed) misses[at] = { printed, answered };
  }
  return misses;
}

function metric(cm: number, m: number) {
  return { diameterIn: cm / CM_PER_IN, lengthFt: m / M_PER_FT };
}

/** What a formula's comment says it was checked against is what was counted here. */
function said(file: string, words: string): void {
  const text = readFileSync(new URL(`../../../src/math/logs/${file}`, import.meta.url), "utf8");
  const checked = text.split("\n").filter((line) => line.includes("@checked"));
  expect(checked.join("\n"), `the @checked line of ${file}`).toContain(words);
}
