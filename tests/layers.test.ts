import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, relative, resolve } from "node:path";
import ts from "typescript";
import { describe, expect, it } from "vitest";

const SRC = resolve(import.meta.dirname, "../src");

/** Who may import whom. Files of one layer may always import each other. */
const MAY_IMPORT: Record<string, RegExp[]> = {
  math: [],
  cells: [/^math\//],
  functions: [/^math\//, /^cells\//, /^catalog\/about\//, /^xlsx\/escaped$/],
  formula: [],
  xlsx: [/^formula\//],
  catalog: [/^math\//, /^cells\//, /^functions\//, /^formula\//, /^xlsx\/escaped$/],
  sheets: [/^math\//, /^catalog\//, /^formula\//, /^xlsx\//],
  engine: [/^cells\//, /^functions(?:$|\/)/, /^formula\//, /^xlsx\//],
  hosts: [/^cells\//, /^functions(?:$|\/)/, /^catalog\//, /^formula\//, /^xlsx\//, /^sheets\//, /^engine\//],
};

/** What only a host may know: the program it runs in. */
const HOST_NAMES = ["Office", "Excel", "CustomFunctions", "document", "window"];

/** What math, cells and functions do without: the same question must always get the same answer. */
const UNSTEADY = /\b(?:Math\.random|Date\.now|new Date|performance\.now|setTimeout|process\.|console\.)/;

const files = readdirSync(SRC, { recursive: true, encoding: "utf8" })
  .map((file) => file.replaceAll("\\", "/"))
  .filter((file) => file.endsWith(".ts") && !file.endsWith(".d.ts"))
  .map((file) => ({ file, layer: file.split("/")[0]!, tree: parsed(file) }));

describe("the layers of the house", () => {
  it("has only the folders of the design", () => {
    expect([...new Set(files.map(({ layer }) => layer))].sort()).toEqual(Object.keys(MAY_IMPORT).sort());
  });

  it.each(Object.keys(MAY_IMPORT))("%s imports only what stands below it", (layer) => {
    const strangers = files
      .filter((one) => one.layer === layer)
      .flatMap(({ file, tree }) => importsOf(tree).map((specifier) => ({ file, to: targetOf(file, specifier) })))
      .filter(
        ({ to }) =>
          to && to !== layer && !to.startsWith(`${layer}/`) && !MAY_IMPORT[layer]!.some((allowed) => allowed.test(to)),
      );
    expect(strangers.map(({ file, to }) => `${file} imports ${to}`)).toEqual([]);
  });

  it("math, cells and functions import no package, so that what ships depends on nothing", () => {
    const packages = files
      .filter(({ layer }) => ["math", "cells", "functions"].includes(layer))
      .flatMap(({ file, tree }) => importsOf(tree).map((specifier) => ({ file, specifier })))
      .filter(({ specifier }) => !specifier.startsWith("."));
    expect(packages).toEqual([]);
  });

  it("only a host knows Excel, the document or the window", () => {
    const leaks = files
      .filter(({ layer }) => layer !== "hosts")
      .flatMap(({ file, tree }) => globalsIn(tree).map((name) => `${file} names ${name}`));
    expect(leaks).toEqual([]);
  });

  it("math, cells and functions know no clock, no chance and no surroundings", () => {
    const unsteady = files
      .filter(({ layer }) => ["math", "cells", "functions"].includes(layer))
      .filter(({ tree }) => UNSTEADY.test(withoutComments(tree)));
    expect(unsteady.map(({ file }) => file)).toEqual([]);
  });

  it("nothing but spread catches what a formula throws", () => {
    const catchers = files
      .filter(({ layer, file }) => ["math", "cells", "functions"].includes(layer) && file !== "cells/spread.ts")
      .filter(({ tree }) => has(tree, ts.isCatchClause));
    expect(catchers.map(({ file }) => file)).toEqual([]);
  });

  it("a table file holds no functions", () => {
    const tables = files.filter(({ file }) => file.endsWith(".table.ts"));
    expect(tables.length).toBeGreaterThan(3);
    expect(tables.filter(({ tree }) => has(tree, ts.isFunctionLike)).map(({ file }) => file)).toEqual([]);
  });
});

function parsed(file: string): ts.SourceFile {
  return ts.createSourceFile(file, readFileSync(join(SRC, file), "utf8"), ts.ScriptTarget.Latest, true);
}

function importsOf(tree: ts.SourceFile): string[] {
  return tree.statements
    .filter((one) => ts.isImportDeclaration(one) || ts.isExportDeclaration(one))
    .flatMap(({ moduleSpecifier }) =>
      moduleSpecifier && ts.isStringLiteral(moduleSpecifier) ? [moduleSpecifier.text] : [],
    );
}

/** Where an import leads, from src; undefined outside src. */
function targetOf(file: string, specifier: string): string | undefined {
  if (!specifier.startsWith(".")) return undefined;
  const target = relative(SRC, resolve(SRC, dirname(file), specifier)).replaceAll("\\", "/");
  return target.startsWith("..") ? undefined : target;
}

function globalsIn(tree: ts.SourceFile): string[] {
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    const named = ts.isPropertyAccessExpression(node) ? node.expression : node;
    if (ts.isIdentifier(named) && HOST_NAMES.includes(named.text) && ts.isPropertyAccessExpression(node))
      found.push(named.text);
    ts.forEachChild(node, visit);
  };
  visit(tree);
  return found;
}

function has(tree: ts.Node, wanted: (node: ts.Node) => boolean): boolean {
  return wanted(tree) || (ts.forEachChild(tree, (child) => has(child, wanted) || undefined) ?? false);
}

function withoutComments(tree: ts.SourceFile): string {
  return tree.text.replace(/\/\*[\s\S]*?\*\/|\/\/.*$/gm, "");
}
