import { readdirSync, readFileSync } from "node:fs";
import { join, relative, resolve } from "node:path";
import ts from "typescript";
import { describe, expect, it } from "vitest";
import { buildPage, PAGE_FOLDER } from "../../src/hosts/tryout/build";
import { builtFolder, filesUnder } from "../hosts/excel/build";

const HOSTS = resolve(import.meta.dirname, "../../src/hosts");

/** Ways of a page to make markup or code of a text. */
const MARKUP = ["innerHTML", "outerHTML", "insertAdjacentHTML", "srcdoc", "createContextualFragment", "setHTMLUnsafe"];
const CODE = ["eval", "Function"];

describe("the code of our pages", () => {
  const sources = readdirSync(HOSTS, { recursive: true, encoding: "utf8" })
    .filter((name) => /\.(?:ts|mjs)$/.test(name) && !name.endsWith(".d.mts"))
    .map((name) => ({ name, text: readFileSync(join(HOSTS, name), "utf8") }));

  it("never makes markup of a text, nor code", () => {
    expect(sources.length).toBeGreaterThan(50);
    expect(sources.flatMap(({ name, text }) => dangersIn(text).map((danger) => `${name}: ${danger}`))).toEqual([]);
  });

  it("is still so in what is shipped", async () => {
    const folder = await builtFolder();
    const scripts = filesUnder(folder).filter((path) => path.endsWith(".js"));
    expect(scripts.map((path) => relative(folder, path)).sort()).toEqual([
      "functions.js",
      "index.js",
      "offline.js",
      "taskpane.js",
    ]);
    expect(scripts.flatMap((path) => dangersIn(readFileSync(path, "utf8")))).toEqual([]);
  });

  it("would be caught", () => {
    expect(
      dangersIn('a.innerHTML = b; a["outerHTML"] = b; eval(c); new Function(d); document.write(e); a.onclick = f'),
    ).toEqual(["innerHTML", "outerHTML", "eval", "Function", "document.write"]);
    expect(dangersIn('setTimeout("go()", 1); x.setAttribute("onload", y)')).toEqual([
      "setTimeout of a text",
      "setAttribute onload",
    ]);
    expect(dangersIn("class RegisteredFunction {}; new RegisteredFunction(name)")).toEqual([]);
  });

  it("is what the try-out page was built from: its script stands in a file of its own", async () => {
    await buildPage();
    expect(readdirSync(PAGE_FOLDER)).toContain("page.js");
  });
});

/** What a script does that could turn a person's text into markup or code. */
function dangersIn(text: string): string[] {
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isPropertyAccessExpression(node)) {
      if (MARKUP.includes(node.name.text)) found.push(node.name.text);
      if (/^document\.write(?:ln)?$/.test(node.getText())) found.push(node.getText());
    }
    if (ts.isElementAccessExpression(node) && ts.isStringLiteralLike(node.argumentExpression))
      if (MARKUP.includes(node.argumentExpression.text)) found.push(node.argumentExpression.text);
    if ((ts.isCallExpression(node) || ts.isNewExpression(node)) && ts.isIdentifier(node.expression)) {
      const called = node.expression.text;
      const first = node.arguments?.[0];
      if (CODE.includes(called)) found.push(called);
      if (/^set(?:Timeout|Interval)$/.test(called) && first && ts.isStringLiteralLike(first))
        found.push(`${called} of a text`);
    }
    if (ts.isCallExpression(node) && /\.setAttribute$/.test(node.expression.getText())) {
      const [name] = node.arguments;
      if (name && ts.isStringLiteralLike(name) && name.text.startsWith("on")) found.push(`setAttribute ${name.text}`);
    }
    ts.forEachChild(node, visit);
  };
  visit(ts.createSourceFile("x.ts", text, ts.ScriptTarget.Latest, true));
  return found;
}
