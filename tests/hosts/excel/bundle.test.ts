import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { readCatalog } from "../../../src/catalog/read-catalog";
import { openBrowser } from "../../browser";
import { answerTo, literalCall } from "../../functions/literal-call";
import { visit, visitFunctions } from "./browser-page";
import { builtFolder, filesUnder, TEST_ADDRESS } from "./build";

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

interface Listed {
  id: string;
  name: string;
  description: string;
  helpUrl: string;
  parameters: { name: string; description: string; type: string; dimensionality: string; optional?: boolean }[];
  result: { dimensionality: string };
}

function listed(): Listed[] {
  return (JSON.parse(readFileSync(join(folder, "functions.json"), "utf8")) as { functions: Listed[] }).functions;
}

/** What the associated function answers in the page: Excel's error objects come back as their own JSON. */
function called(name: string, given: unknown[]): Promise<unknown[][]> {
  return page.evaluate(
    ([name, given]) => {
      const { mappings } = (
        CustomFunctions as unknown as { _association: { mappings: Record<string, (...cells: unknown[]) => unknown> } }
      )._association;
      return JSON.parse(JSON.stringify(mappings[name]!(...given))) as unknown[][];
    },
    [name, [...given, INVOCATION]] as const,
  );
}

/** What office.js keeps of the functions it was told of. */
function associated(page: Page): Promise<string[]> {
  return page.evaluate(() =>
    Object.keys((CustomFunctions as unknown as { _association: { mappings: object } })._association.mappings).sort(),
  );
}

describe("the built functions beside Microsoft's own runtime", () => {
  it("are associated under exactly the ids that Excel is told of", async () => {
    const ids = listed()
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
        expect((await called(name, literalCall(formula).given)).map(settled), formula).toEqual(
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

  it("hand on an error of an input cell as the same error", async () => {
    const codes = await page.evaluate(() => {
      const { Error, ErrorCode } = CustomFunctions;
      const { mappings } = (
        CustomFunctions as unknown as {
          _association: { mappings: Record<string, (...cells: unknown[]) => { code: string }[][]> };
        }
      )._association;
      return Object.values(ErrorCode).map((code) => [
        code,
        mappings["KERFLOSS"]!([[new Error(code)]], [[0.125]])[0]![0]!.code,
      ]);
    });
    expect(codes.length).toBe(7);
    for (const [given, answered] of codes) expect(answered).toBe(given);
  });

  it("answer Excel's own error, with a message that says what was wanted", async () => {
    const error = await page.evaluate(() => {
      const { mappings } = (
        CustomFunctions as unknown as { _association: { mappings: Record<string, (...cells: unknown[]) => Error[][]> } }
      )._association;
      const answered = mappings["CUTWIDTH"]!([[20]], [[21]])[0]![0]!;
      return {
        isExcels: answered instanceof CustomFunctions.Error,
        json: JSON.parse(JSON.stringify(answered)) as { code: string; message: string },
      };
    });
    expect(error.isExcels).toBe(true);
    expect(error.json.code).toBe("#N/A");
    expect(error.json.message).toMatch(/depth.*20.*21/i);
  });
});

describe("functions.json", () => {
  it("gives every function a name that Excel takes and keeps apart from its cells", () => {
    for (const { id, name } of listed()) {
      expect(name).toBe(id);
      expect(id).toMatch(/^[A-Z][A-Z0-9]{2,63}$/);
      expect(id).not.toMatch(/^[A-Z]{1,3}\d+$/);
    }
  });

  it("points every function to a page that is there", () => {
    for (const { helpUrl } of listed()) {
      expect(helpUrl.startsWith(`${TEST_ADDRESS}/`)).toBe(true);
      expect(existsSync(join(folder, helpUrl.slice(TEST_ADDRESS.length))), helpUrl).toBe(true);
    }
  });

  it("describes every function and argument in words that Excel has room for", () => {
    for (const { description, parameters } of listed())
      for (const text of [description, ...parameters.map((p) => p.description)]) {
        expect(text).not.toBe("");
        expect(description.length).toBeLessThan(128);
      }
  });

  it("takes ranges, answers ranges, and lists arguments that may be left out last", () => {
    for (const { parameters, result } of listed()) {
      expect(result.dimensionality).toBe("matrix");
      expect(parameters.every(({ type, dimensionality }) => type === "any" && dimensionality === "matrix")).toBe(true);
      const optional = parameters.map((p) => p.optional === true);
      expect(optional).toEqual([...optional].sort());
    }
  });

  it("lets a function see an error in a cell, so that one bad row does not take the others with it", () => {
    expect(JSON.parse(readFileSync(join(folder, "functions.json"), "utf8"))).toMatchObject({
      allowErrorForDataTypeAny: true,
    });
  });
});

describe("the built pages", () => {
  it("lead to nothing that was not built", () => {
    const dead = filesUnder(folder)
      .filter((path) => path.endsWith(".html"))
      .flatMap((path) =>
        [...readFileSync(path, "utf8").matchAll(/\s(?:href|src)="([^"#]+)/g)]
          .map(([, link = ""]) => link)
          .filter((link) => !link.startsWith("https://") && !existsSync(join(path, "..", link)))
          .map((link) => `${path}: ${link}`),
      );
    expect(dead).toEqual([]);
  });

  it("hold no script of their own, and none but ours and Microsoft's", () => {
    for (const path of filesUnder(folder).filter((path) => path.endsWith(".html"))) {
      const page = readFileSync(path, "utf8");
      expect(page, path).toContain("Content-Security-Policy");
      expect(page, path).not.toMatch(/<script(?![^>]*\ssrc=)|\son[a-z]+="/);
      for (const [, source] of page.matchAll(/<script[^>]*\ssrc="([^"]*)"/g))
        expect(source).toMatch(
          /^(functions\.js|taskpane\.js|https:\/\/officeapis\.public\.onecdn\.static\.microsoft\/1\/office\.js)$/,
        );
    }
  });

  it("carry none of Microsoft's code in the bundles", () => {
    for (const name of ["functions.js", "taskpane.js"])
      expect(readFileSync(join(folder, name), "utf8")).not.toMatch(/Microsoft Corporation|OSF\.|OfficeExtension/);
  });

  it("weigh at most 120 KB for the functions, as they go over the wire", () => {
    expect(gzipSync(readFileSync(join(folder, "functions.js"))).length).toBeLessThan(120 * 1024);
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
