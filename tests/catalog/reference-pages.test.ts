import { readFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { readCatalog, ROOT } from "../../src/catalog/read-catalog";
import { referencePages } from "../../src/catalog/reference/pages";
import { BLANK_EXAMPLES, COLUMN_EXAMPLES, READING_EXAMPLES } from "../../src/catalog/reference/reading-page";
import { GRADE_TERMS } from "../../src/catalog/reference/grades-page";
import { SOURCES } from "../../src/math/sources";
import { openBrowser } from "../browser";
import { answerTo } from "../functions/literal-call";

const catalog = readCatalog();
const pages = referencePages(catalog);
const AXE = readFileSync(join(ROOT, "node_modules/axe-core/axe.min.js"), "utf8");

/** Every kind of page: cautions, tables, folded formulas, one and two pictures, none. */
const SAMPLE = ["index", "reading", "grades", "LOGSCALE", "LOGRULES", "CULLSWEEP", "HEADHEIGHTS", "CUTPLAN", "SLABFEET"]
  .concat(["SPECIES", "LOGWEIGHT", "EMC", "DRYFORECAST", "SCREWTORQUE", "TONGUESHARE", "SLINGLEG", "PARTNERSHARE"])
  .map((name) => `${name}.html`);

describe("the reference pages", () => {
  it.each([...READING_EXAMPLES, ...BLANK_EXAMPLES, ...COLUMN_EXAMPLES])(
    "on how a cell is read say the truth: $formula gives $result",
    ({ formula, result }) => {
      const rows = answerTo(formula).map((row) => row.map(shown).join(","));
      expect(rows.join(";")).toBe(result.replace(/[{}]/g, ""));
    },
  );

  it("lead nowhere that is not there", () => {
    const targets = new Set([...pages].flatMap(([file, html]) => [file, ...idsIn(html).map((id) => `${file}#${id}`)]));
    targets.add("style.css");
    const lost = [...pages].flatMap(([file, html]) =>
      [...html.matchAll(/href="([^"]*)"/g)]
        .map(([, href]) => (href!.startsWith("#") ? `${file}${href}` : href!))
        .filter((href) => !targets.has(href))
        .map((href) => `${file} leads to ${href}`),
    );
    expect(lost).toEqual([]);
  });

  it("hold no id twice, no script and no style of their own", () => {
    for (const [file, html] of pages) {
      const ids = idsIn(html);
      expect(new Set(ids).size, file).toBe(ids.length);
      expect(html, file).not.toMatch(/<script|<style|\sstyle=|\son\w+=/i);
    }
  });

  it.each(catalog)("show every caution, argument, example and formula of $name", (entry) => {
    const html = pages.get(`${entry.name}.html`)!;
    const text = textOf(html);
    const lent = [...html.matchAll(/And all \d+ formulas of <a href="(\w+)\.html">/g)].map(([, name]) => name!);
    const whole = [text, ...lent.map((name) => textOf(pages.get(`${name}.html`)!))].join("\n");
    for (const caution of entry.cautions) expect(text).toContain(plain(caution));
    for (const param of entry.params) expect(text).toContain(plain(param.text));
    for (const { formula } of entry.examples) expect(text).toContain(plain(formula));
    expect(text).toContain(entry.grade);
    for (const { formula, sources, range, checked } of entry.formulas)
      for (const line of [formula, ...sources, range, checked]) expect(whole).toContain(plain(line));
  });

  it("list the settings of CUTPLAN one under the other, a group for each thing they are about", () => {
    const html = pages.get("CUTPLAN.html")!;
    const group = html.slice(html.indexOf("<h3>The mill</h3>"), html.indexOf("<h3>The log</h3>"));
    expect(group.match(/<dt><code>[^<]*/g)).toEqual(
      ["bed clearance", "guide opening", "scale step", "first cut", "unit"].map((name) => `<dt><code>${name}`),
    );
    expect(group).toMatch(
      /scale step<\/code><\/dt><dd>[^<]+<\/dd><dd><span class="quiet">Bare number: inches\. Left out: 1\/32\./,
    );
    expect(html).toContain("For 0 write &quot;0 deg&quot;: a number 0 could be a blank and is refused; left out: 45.");
    expect(html).toContain("<p>Settings are two columns of name and value");
    expect(pages.get("LOGSCALE.html")).toContain("<p>Long logs: ");
  });

  it("put a caution before the picture and the arguments", () => {
    const html = pages.get("SLINGLEG.html")!;
    expect(html.indexOf('class="caution"')).toBeLessThan(html.indexOf("<figure>"));
    expect(html.indexOf("<figure>")).toBeLessThan(html.indexOf("<h2>Arguments"));
  });

  it("list every document, with what it was seen in, and explain every grade that is given", () => {
    const text = textOf(pages.get("grades.html")!);
    for (const { document, seenIn } of Object.values(SOURCES))
      expect(text).toContain(plain(seenIn ? `${document} Seen in ${seenIn}.` : document));
    const words = catalog.flatMap(({ grade }) => grade.replace("in part ", "").split(/, | and /));
    expect([...new Set(words)].filter((word) => !GRADE_TERMS.includes(word))).toEqual([]);
  });
});

describe("a reader of the reference pages", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await openBrowser();
  });
  afterAll(() => browser.close());

  for (const colorScheme of ["light", "dark"] as const)
    it(`finds them accessible by axe-core on a ${colorScheme} screen`, async () => {
      const context = await browser.newContext({ colorScheme, bypassCSP: true, viewport: { width: 360, height: 800 } });
      const page = await context.newPage();
      for (const file of SAMPLE) expect(await violations(page, file), file).toEqual([]);
      await context.close();
    });

  it("never has to scroll sideways on a phone of 320 pixels", async () => {
    const context = await browser.newContext({ viewport: { width: 320, height: 640 } });
    const page = await context.newPage();
    const wide: string[] = [];
    for (const file of pages.keys()) {
      await page.goto(address(file));
      await page.evaluate(() => document.querySelectorAll("details").forEach((one) => (one.open = true)));
      if (await page.evaluate(() => document.documentElement.scrollWidth > window.innerWidth)) wide.push(file);
    }
    expect(wide).toEqual([]);
    await context.close();
  });
});

async function violations(page: Page, file: string): Promise<string[]> {
  await page.goto(address(file));
  await page.evaluate(() => document.querySelectorAll("details").forEach((one) => (one.open = true)));
  await page.evaluate(AXE);
  return page.evaluate(async () => {
    const { axe } = window as unknown as {
      axe: { run(): Promise<{ violations: { id: string; nodes: { html: string }[] }[] }> };
    };
    const found = await axe.run();
    return found.violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(" | ")}`);
  });
}

function address(file: string): string {
  return pathToFileURL(join(ROOT, "assets/reference", file)).href;
}

function idsIn(html: string): string[] {
  return [...html.matchAll(/\sid="([^"]*)"/g)].map(([, id]) => id!);
}

function shown(cell: unknown): string {
  return typeof cell === "object" && cell !== null ? (cell as { error: string }).error : String(cell);
}

/** What a page says, without its marks. */
function textOf(html: string): string {
  const text = html
    .replace(/<[^>]*>/g, "")
    .replace(/&lt;/g, "<")
    .replace(/&gt;/g, ">")
    .replace(/&quot;/g, '"');
  return plain(text.replace(/&amp;/g, "&"));
}

function plain(text: string): string {
  return text.replace(/`/g, "").replace(/\s+/g, " ").trim();
}
