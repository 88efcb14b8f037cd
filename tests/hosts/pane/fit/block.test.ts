import { describe, expect, it } from "vitest";
import catalog from "../../../../src/catalog/catalog.json";
import type { Entry } from "../../../../src/catalog/entry";
import { headedBlock, type HeadedBlock } from "../../../../src/hosts/pane/fit/block";
import { formulaIn, formulasDown, type Source } from "../../../../src/hosts/pane/fit/column-formula";
import { answersForRows, fitted } from "../../../../src/hosts/pane/fit/fit";
import { freeColumn, headingFor, plainHeading } from "../../../../src/hosts/pane/fit/new-column";
import { mustBeReadable } from "../../../../src/hosts/pane/fit/sheet-here";
import { asChosen, remarkOn } from "../../../../src/hosts/pane/fit/suggested";
import { typed } from "../../../../src/hosts/pane/typed";
import { sheetOf, type Content } from "./sheet-of";

const entryOf = (name: string): Entry => (catalog as Entry[]).find((one) => one.name === name)!;
const LOGSCALE = entryOf("LOGSCALE");

function block(cells: Content[][], chosen: string): HeadedBlock {
  const found = headedBlock(sheetOf(cells, chosen));
  if (!found || "lacks" in found) throw new Error("No headed block");
  return found;
}

/** An invented sheet with a blank row and a sum. */
const LOGS: Content[][] = [["Spring"], ["Dia", "Len"], [18, 12], ["", ""], [20, 10], ["Total", "=SUM(B3:B5)->22"]];

const sourcesFor = (entry: Entry, one: HeadedBlock): Source[] =>
  entry.params.map((param) => fitted(entry, one).find((fit) => fit.param === param)?.found ?? typed(""));

describe("where the chosen cell lies", () => {
  it.each(["A1", "A2", "B3", "A4", "B5", "A6", "C3"])("%s is in the block or beside it", (chosen) => {
    const { rows, headingRow, box } = block(LOGS, chosen);
    expect([headingRow, rows, box.right]).toEqual([1, [2, 4], 1]);
  });

  it.each(["E3", "A9", "C8"])("%s lies in none", (chosen) => {
    expect(headedBlock(sheetOf(LOGS, chosen))).toBeUndefined();
  });

  it("is told what is missing where numbers have no headings", () => {
    const bare = headedBlock(
      sheetOf(
        [
          [18, 12],
          [20, 10],
        ],
        "A2",
      ),
    );
    expect(bare).toEqual({ lacks: expect.stringMatching(/no headings above them. Type a heading over each column/) });
    expect(headedBlock(sheetOf([["a note"]], "A1"))).toBeUndefined();
    expect(headedBlock(sheetOf([[7]], "A1"))).toBeUndefined();
  });

  it("is told that a table has no filled row yet", () => {
    const table = { name: "Yard", sheet: "Mine", columns: ["Dia"], headings: true, totals: false };
    const here = sheetOf([["Dia"], [""]], "A2", {
      table: { ...table, block: { top: 0, left: 0, bottom: 1, right: 0 } },
    });
    expect(headedBlock(here)).toEqual({ lacks: expect.stringMatching(/no filled row below them yet/) });
  });

  it("counts rows that add up their own cells, and not the one that adds up the rows", () => {
    const cells = [
      ["Dia", "Len", "Both"],
      [18, 12, "=SUM(A2:B2)->30"],
      [20, 10, "=SUM([@Dia],[@Len])->30"],
      [38, 22, "=SUM(C$2:C$3)->60"],
    ];
    expect(block(cells, "A2").rows).toEqual([1, 2]);
  });

  it("is told that a table hides its headings", () => {
    const table = { name: "Yard", sheet: "Mine", columns: ["Column1"], headings: false, totals: false };
    const here = sheetOf([[1], [2]], "A1", { table: { ...table, block: { top: 0, left: 0, bottom: 1, right: 0 } } });
    expect(headedBlock(here)).toEqual({ lacks: "The table Yard hides its headings. Show its header row first." });
  });

  it("is refused on a sheet that is too large to be looked through", () => {
    expect(() => mustBeReadable("Mine", 200_001)).toThrow("reaches over 200001 cells");
    expect(() => mustBeReadable("Mine", 200_000)).not.toThrow();
  });
});

describe("the new column", () => {
  it("has a formula in each filled row and nothing in a blank one or a sum", () => {
    const one = block(LOGS, "A3");
    expect(formulasDown(LOGSCALE, sourcesFor(LOGSCALE, one), one, "'Mine'!")).toEqual([
      "=BOLE.LOGSCALE(A3, B3)",
      "",
      "=BOLE.LOGSCALE(A5, B5)",
      "",
    ]);
  });

  it("keeps cells that were typed for every row in their place", () => {
    const one = block(LOGS, "A3");
    const sources = sourcesFor(LOGSCALE, one);
    sources[2] = typed("'Mine'!D1");
    expect(formulaIn(4, LOGSCALE, sources, one, "'Mine'!")).toBe("=BOLE.LOGSCALE(A5, B5, $D$1)");
    sources[2] = typed("Doyle");
    expect(formulaIn(4, LOGSCALE, sources, one, "'Mine'!")).toBe('=BOLE.LOGSCALE(A5, B5, "Doyle")');
  });

  it.each<[string, Content[][], number]>([
    ["right beside where that is free", LOGS, 2],
    ["further on where cells stand beside it further down", [...LOGS.slice(0, 4), [20, 10, "", "mine"], LOGS[5]!], 5],
    ["apart from a table beside it", LOGS.map(([dia = "", len = ""]) => [dia, len, "", "x"]), 5],
    ["past a formula that shows nothing", [...LOGS.slice(0, 2), [18, 12, "", '=""->'], ...LOGS.slice(3)], 5],
  ])("goes %s", (_, cells, column) => {
    expect(freeColumn(block(cells, "A3"), sheetOf(cells, "A3"))).toBe(column);
  });

  it("has a heading that none of the others has", () => {
    const one = block(
      [
        ["Dia", "Len", "Board feet", "board feet 2"],
        [18, 12, 1, 2],
      ],
      "A2",
    );
    expect(headingFor(" Board  feet", one)).toBe("Board feet 3");
    expect(headingFor("Mine", one)).toBe("Mine");
  });

  it("is called what the function answers, in plain words", () => {
    expect(plainHeading("Board feet, whole", "CULLBOX")).toBe("Board feet");
    expect(plainHeading("Volume in the unit asked for", "SMALIAN")).toBe("Volume");
    expect(plainHeading("", "X")).toBe("X");
    const headings = (catalog as Entry[]).filter(answersForRows).map((one) => plainHeading(one.returns, one.name));
    expect(Math.max(...headings.map((one) => one.length))).toBeLessThanOrEqual(32);
  });
});

describe("a unit in a heading", () => {
  const firstFormula = (...dia: Content[]) => {
    const one = block([["Dia (cm)", "Len"], ...dia.map((size) => [size, 12])], "B2");
    return formulaIn(1, LOGSCALE, sourcesFor(LOGSCALE, one), one, "");
  };

  it.each<[string, Content[], string]>([
    ["numbers", [50, 61.5], '=BOLE.LOGSCALE(A2&" cm", B2)'],
    ["numbers typed as text", ["50", 61], '=BOLE.LOGSCALE(A2&" cm", B2)'],
    ["numbers and blanks", [50, ""], '=BOLE.LOGSCALE(IF(A2="","",A2&" cm"), B2)'],
    ["texts that say it themselves", ["50 cm", "20 in"], "=BOLE.LOGSCALE(A2, B2)"],
    ["numbers beside such texts", [50, "20 in"], '=BOLE.LOGSCALE(IF(ISNUMBER(A2),A2&" cm",A2), B2)'],
    ["what no formula tells apart", ["50", "20 in"], "=BOLE.LOGSCALE(, B2)"],
  ])("is said for %s", (_, dia, formula) => {
    expect(firstFormula(...dia)).toBe(formula);
  });
});

describe("the choice of a column", () => {
  const chooseFor = (cells: Content[][], name = "diameter") => {
    const one = block(cells, "A2");
    const fit = fitted(LOGSCALE, one).find(({ param }) => param.name === name)!;
    return { one, fit, remark: remarkOn(LOGSCALE, one, fit) };
  };

  it("is the person's where two fit equally well, or none does", () => {
    const two = chooseFor([
      ["Dia", "Dia", "Len"],
      [18, 20, 12],
      [16, 17, 10],
    ]);
    expect(two.fit.found).toBeUndefined();
    expect(two.remark).toMatch(/^A: Dia and B: Dia fit equally well: choose one\. Small-end diameter/);
    const none = chooseFor([
      ["Colour", "Len"],
      [3, 12],
      [4, 10],
    ]);
    expect(none.fit.found).toBeUndefined();
    expect(none.remark).toMatch(/^No column fits: choose one, or type it below\./);
  });

  it("says how many cells cannot be read, and which comes first", () => {
    const { fit, remark } = chooseFor([
      ["Dia", "Len"],
      [18, 12],
      ["wet", 10],
      ["?", 8],
    ]);
    expect(fit.found?.column.heading).toBe("Dia");
    expect(remark).toBe('2 of 3 cells cannot be read, the first in row 3: "wet".');
  });

  it("is refused with the reason where the column cannot be read for it", () => {
    const one = block(
      [
        ["Dia", "Weight (kg)", "Remark"],
        [18, 400, "good"],
        [20, 500, "bent"],
      ],
      "A2",
    );
    const [diameter] = LOGSCALE.params;
    expect(asChosen(LOGSCALE, diameter!, one.columns[1]!)).toBe(
      "B: Weight (kg) is in kg, which diameter does not read.",
    );
    expect(asChosen(LOGSCALE, diameter!, one.columns[2]!)).toMatch(
      /^None of its cells can be read\. The first: diameter: wanted/,
    );
  });

  it("never takes a price for an amount, nor the large end for the small one", () => {
    const { fit } = chooseFor([
      ["Dia butt", "Len"],
      [18, 12],
      [20, 10],
    ]);
    expect(fit.found).toBeUndefined();
    const one = block(
      [
        ["Wood", "$ per bd ft"],
        ["red oak", 3],
        ["ash", 4],
      ],
      "A2",
    );
    expect(fitted(entryOf("LUMBERWEIGHT"), one).find(({ param }) => param.name === "boardfeet")!.found).toBeUndefined();
  });
});
