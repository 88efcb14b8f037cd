import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { registry } from "../../../src/functions/registry";
import { readCatalog } from "../../../src/catalog/read-catalog";
import { openBrowser } from "../../browser";
import { answerTo, literalCall } from "../../functions/literal-call";
import { visit, visitFunctions } from "./browser-page";
import { builtFolder } from "./build";
import { listedFunctions } from "./listed-functions";

/** Excel hands this over behind the cells of every call. */
const INVOCATION = { functionName: "", address: "Sheet1!A1", isInvocation: true };

let browser: Browser;
let page: Page;
let folder: string;

beforeAll(async () => {
  folder = await builtFolder();
  browser = await openBrowser();
  page = (await visitFunctions(browser, folder)).page;
});

afterAll(() => browser.close());

/**
 * What the associated function answers in the page: Excel's error objects come back as their own JSON. An answer that is
 * one error is thrown.
 */
function called(name: string, given: unknown[]): Promise<unknown[][]> {
  return page.evaluate(
    ([name, given]) => {
      const { mappings } = (
        CustomFunctions as unknown as { _association: { mappings: Record<string, (...cells: unknown[]) => unknown> } }
      )._association;
      const answer = () => {
        try {
          return mappings[name]!(...given);
        } catch (thrown) {
          return [[thrown]];
        }
      };
      return JSON.parse(JSON.stringify(answer())) as unknown[][];
    },
    [name, [...given, INVOCATION]] as const,
  );
}

/** An argument that is repeated is handed over as one list of all that was given for it. */
function asHanded(name: string, given: unknown[]): unknown[] {
  const { takes } = registry[name]!;
  const last = takes.length - 1;
  return takes[last]?.facts.many === "repeated" ? [...given.slice(0, last), given.slice(last)] : given;
}

/** What office.js keeps of the functions it was told of. */
function associated(page: Page): Promise<string[]> {
  return page.evaluate(() =>
    Object.keys((CustomFunctions as unknown as { _association: { mappings: object } })._association.mappings).sort(),
  );
}

describe("the built functions beside Microsoft's own runtime", () => {
  it("are associated under exactly the ids that Excel is told of", async () => {
    const ids = listedFunctions(folder)
      .map(({ id }) => id)
      .sort();
    expect(ids.length).toBeGreaterThan(0);
    expect(await associated(page)).toEqual(ids);
  });

  it("are associated beside office.js in the page that Excel opens too", async () => {
    const pane = await visit(browser, folder, "taskpane.html");
    expect(await associated(pane.page)).toEqual(await associated(page));
    expect(pane.complaints).toEqual([]);
    expect(pane.strayRequests).toEqual([]);
  });

  it("answer every documented example as they do here", async () => {
    for (const { name, examples } of readCatalog())
      for (const { formula } of examples)
        expect((await called(name, asHanded(name, literalCall(formula).given))).map(settled), formula).toEqual(
          asExcelSees(answerTo(formula)),
        );
  });

  it("answer one column in one call, a bad row with its own error", async () => {
    const answer = await called("KERFLOSS", [[[1.125], ["a board"], [2]], [[0.125]]]);
    expect(answer[0]).toEqual([0.1]);
    expect(answer[1]![0]).toMatchObject({ valueType: "CustomFunctionError", basicValue: "#VALUE!" });
    expect(answer[2]![0]).toBeCloseTo(0.125 / 2.125, 12);
  });

  it("take an argument left out, handed over as null, for a blank cell", async () => {
    expect(await called("HEADHEIGHTS", [[[10]], [[2.125]], [[0.125]], [[9]], null])).toEqual(
      await called("HEADHEIGHTS", [[[10]], [[2.125]], [[0.125]], [[9]], [[null]]]),
    );
  });

  it("hand on an error of an input cell as the same error, or in words where Excel takes it from no add-in", async () => {
    const codes = await page.evaluate(() => {
      const { Error, ErrorCode } = CustomFunctions;
      const { mappings } = (
        CustomFunctions as unknown as {
          _association: { mappings: Record<string, (...cells: unknown[]) => { code: string; message: string }[][]> };
        }
      )._association;
      return Object.values(ErrorCode).map((code) => {
        const { code: answered, message } = mappings["KERFLOSS"]!([[1], [new Error(code)]], [[0.125]])[1]![0]!;
        return [code, answered, message] as const;
      });
    });
    expect(codes.length).toBe(7);
    for (const [given, answered, message] of codes)
      if (given === "#NAME?" || given === "#REF!")
        expect([answered, message]).toEqual(["#VALUE!", `thickness: the cell holds ${given}`]);
      else expect(answered).toBe(given);
  });

  it("throw Excel's own error, with a message that says what was wanted", async () => {
    const error = await page.evaluate(() => {
      const { mappings } = (
        CustomFunctions as unknown as { _association: { mappings: Record<string, (...cells: unknown[]) => unknown> } }
      )._association;
      try {
        mappings["CUTWIDTH"]!([[20]], [[21]]);
      } catch (thrown) {
        return {
          isExcels: thrown instanceof CustomFunctions.Error,
          json: JSON.parse(JSON.stringify(thrown)) as { code: string; message: string },
        };
      }
      return undefined;
    });
    expect(error?.isExcels).toBe(true);
    expect(error?.json.code).toBe("#N/A");
    expect(error?.json.message).toMatch(/depth.*20.*21/i);
  });
});

/** An answer of ours as Excel gets it: an error in Excel's spelling, with its message. */
function asExcelSees(answer: unknown[][]): unknown[][] {
  return answer.map((row) =>
    settled(row).map((cell) => {
      if (typeof cell !== "object" || cell === null) return cell;
      const { error, message } = cell as { error: string; message: string };
      return expect.objectContaining({ basicValue: error, message }) as unknown;
    }),
  );
}

/** Two JavaScript engines may differ in the last bits of a power or a logarithm: twelve digits, and no dust beside 0. */
function settled(row: unknown[]): unknown[] {
  return row.map((cell) =>
    typeof cell !== "number" ? cell : Math.abs(cell) < 1e-9 ? 0 : Number(cell.toPrecision(12)),
  );
}
