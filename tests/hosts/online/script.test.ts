import { describe, expect, it } from "vitest";
import { readCatalog } from "../../../src/catalog/read-catalog";
import { registry } from "../../../src/functions/registry";
import { namesFromOutside, youngerThan2019 } from "./names-used";
import { declared, notOfTheLanguage, ownGlobals, script } from "./online-sheet";

/** The comment that stands right above a function's declaration. */
function commentAbove(name: string): string {
  const end = script.indexOf(`\nfunction ${name}(`);
  expect(script.slice(0, end).endsWith("*/"), name).toBe(true);
  return script.slice(script.lastIndexOf("/**", end), end);
}

describe("the script for the online sheet", () => {
  it("declares every function, and beside them only the bundle that they ask", () => {
    const wanted = Object.keys(registry).map((name) => `BOLE_${name}`);
    expect(wanted.length).toBeGreaterThan(100);
    expect(declared().sort()).toEqual([...wanted, "Bole"].sort());
  });

  it("tells the host's autocomplete what each function and argument is", () => {
    for (const { name, summary, params } of readCatalog()) {
      const comment = commentAbove(`BOLE_${name}`);
      expect(comment).toContain(` * ${summary}\n`);
      expect(comment).toMatch(/ \* @return \{any\} .+\n \* @customfunction\n/);
      const told = [...comment.matchAll(/ \* @param \{any\} (\w+) (.+)/g)];
      expect(
        told.map(([, param]) => param),
        name,
      ).toEqual(params.map((param) => param.name));
      for (const [at, { text, optional }] of params.entries()) {
        expect(told[at]![2]).toContain(text);
        expect(told[at]![2]!.startsWith("Optional. ")).toBe(optional);
      }
    }
  });

  it("asks nothing of its surroundings but what ECMAScript has", () => {
    const outside = namesFromOutside(script);
    expect(outside).toContain("Math");
    const known = (name: string) => name === "arguments" || ownGlobals.has(name);
    expect(outside.filter((name) => !known(name) || notOfTheLanguage.includes(name))).toEqual([]);
  });

  it("is written in the language of 2019", () => {
    expect(youngerThan2019("class A { b = c?.d ?? 1 }; e ??= 1;")).toBe(4);
    expect(youngerThan2019(script)).toBe(0);
  });

  it("would be found out if it asked for more", () => {
    const more = "const a = 1; function f(b) { return { c: a, fetch: b.window, d: fetch(require('x')) }; }";
    expect(namesFromOutside(`${more} window.e = document;`)).toEqual(["document", "fetch", "require", "window"]);
  });

  it("says at its head how to use it and what is left out", () => {
    const head = script.slice(0, script.indexOf("*/"));
    expect(head).toContain("Extensions, Apps Script");
    expect(head).toContain("What is left out");
  });
});
