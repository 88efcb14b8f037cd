import { afterAll, beforeAll, describe, expect, it, vi } from "vitest";
import { excelAnswer } from "../../../src/hosts/excel/answer";

/** Excel's error class as far as an answer uses it; the tests of the bundle use Microsoft's own. */
class ExcelError {
  constructor(
    readonly code: string,
    readonly message?: string,
  ) {}
}

const ErrorCode = {
  divisionByZero: "#DIV/0!",
  invalidName: "#NAME?",
  invalidNumber: "#NUM!",
  invalidReference: "#REF!",
  invalidValue: "#VALUE!",
  notAvailable: "#N/A",
  nullReference: "#NULL!",
};

beforeAll(() => vi.stubGlobal("CustomFunctions", { Error: ExcelError, ErrorCode }));
afterAll(() => vi.unstubAllGlobals());

/** The error of a cell in a spilled answer. */
const cellFor = (error: string) => excelAnswer([[1], [{ error, message: "why" }]])[1]![0];

/** What an answer of one cell throws. */
const thrownFor = (error: string): unknown => {
  try {
    return excelAnswer([[{ error, message: "why" }]]);
  } catch (thrown) {
    return thrown;
  }
};

describe("an answer on its way into Excel", () => {
  it("keeps numbers, text and truth values as they are", () => {
    expect(excelAnswer([[1, "oak", true]])).toEqual([[1, "oak", true]]);
  });

  it("fills short rows and holes with empty text, because Excel shows nothing as 0", () => {
    expect(excelAnswer([["pass", "height", "board"], [1], [undefined, null, 3]])).toEqual([
      ["pass", "height", "board"],
      [1, "", ""],
      ["", "", 3],
    ]);
  });

  it("fills a whole column of a sheet, 1,048,576 rows", () => {
    const rows = 1_048_576;
    const column = excelAnswer(Array.from({ length: rows }, (_, at) => [at]));
    expect(column.length).toBe(rows);
    expect(column.at(-1)).toEqual([rows - 1]);
  });

  it("is one empty cell when there is nothing at all", () => {
    expect(excelAnswer([])).toEqual([[""]]);
    expect(excelAnswer([[]])).toEqual([[""]]);
  });

  it.each(["#VALUE!", "#N/A"])("carries the message of %s", (error) => {
    expect(cellFor(error)).toEqual(new ExcelError(error, "why"));
  });

  it.each(["#VALUE!", "#N/A"])("throws %s where it is the whole answer, as Microsoft documents it", (error) => {
    expect(thrownFor(error)).toEqual(new ExcelError(error, "why"));
  });

  it.each(["#DIV/0!", "#NULL!", "#NUM!"])("hands on %s as itself, without words Excel would not show", (error) => {
    expect(cellFor(error)).toEqual(new ExcelError(error));
  });

  it.each(["#NAME?", "#REF!", "#SPILL!", "#CALC!", "#BUSY!"])(
    "turns %s, which an add-in may not answer, into #VALUE! with the message",
    (error) => {
      expect(cellFor(error)).toEqual(new ExcelError("#VALUE!", "why"));
    },
  );
});
