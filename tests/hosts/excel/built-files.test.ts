import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { describe, expect, it } from "vitest";
import { builtFolder, filesUnder, TEST_ADDRESS } from "./build";
import { listedFunctions } from "./listed-functions";

const folder = await builtFolder();
const listed = listedFunctions(folder);

describe("functions.json", () => {
  it("gives every function a name that Excel takes and keeps apart from its cells", () => {
    for (const { id, name } of listed) {
      expect(name).toBe(id);
      expect(id).toMatch(/^[A-Z][A-Z0-9]{2,63}$/);
      expect(id).not.toMatch(/^[A-Z]{1,3}\d+$/);
    }
  });

  it("points every function to a page that is there", () => {
    for (const { helpUrl } of listed) {
      expect(helpUrl.startsWith(`${TEST_ADDRESS}/`)).toBe(true);
      expect(existsSync(join(folder, helpUrl.slice(TEST_ADDRESS.length))), helpUrl).toBe(true);
    }
  });

  it("describes every function and argument in words that Excel has room for", () => {
    for (const { description, parameters } of listed)
      for (const text of [description, ...parameters.map((p) => p.description)]) {
        expect(text).not.toBe("");
        expect(description.length).toBeLessThan(128);
      }
  });

  it("takes ranges, answers ranges, and lists arguments that may be left out last", () => {
    for (const { parameters, result } of listed) {
      expect(result.dimensionality).toBe("matrix");
      for (const { name, type, dimensionality, customEnumId } of parameters) {
        // Only an argument with a list of words is text: Excel drops down its list. Any other takes what a cell may hold.
        expect(type, name).toBe(customEnumId === undefined ? "any" : "string");
        expect(dimensionality, name).toBe("matrix");
      }
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
          /^(functions\.js|index\.js|taskpane\.js|https:\/\/officeapis\.public\.onecdn\.static\.microsoft\/1\/office\.js)$/,
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
