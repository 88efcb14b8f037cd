import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { validateXML } from "xmllint-wasm";
import { PICTURES } from "../../src/catalog/pictures";
import { svg } from "../../src/functions/drawing/marks";
import { readCatalog } from "../../src/catalog/read-catalog";
import { openBrowser } from "../browser";

const catalog = readCatalog();
const drawn = Object.entries(PICTURES).map(([name, picture]) => ({ name, text: svg(`picture-${name}`, picture) }));

describe("the pictures of the reference pages", () => {
  it("are each asked for by a function, and every one asked for is there", () => {
    const asked = new Set(catalog.flatMap(({ pictures }) => pictures));
    expect([...asked].sort()).toEqual(Object.keys(PICTURES).sort());
  });

  it("stand on the page of whatever a sawyer must measure in the round", () => {
    const without = catalog.filter(({ pictures, params }) => pictures.length === 0 && params.some(isMeasured));
    expect(without.map(({ name }) => name)).toEqual([]);
  });

  it("are well-formed XML, which a broken one is not", async () => {
    const files = drawn.map(({ name, text }) => ({ fileName: `${name}.svg`, contents: text }));
    const whole = await validateXML({ xml: files, normalization: "format" });
    expect(whole.errors).toEqual([]);
    const broken = await validateXML({ xml: drawn[0]!.text.replace("</g>", ""), normalization: "format" });
    expect(broken.valid).toBe(false);
  });

  it.each(drawn)("$name has a title and a description, and brings nothing along", ({ name, text }) => {
    expect(text).toMatch(new RegExp(`<title id="picture-${name}-title">[^<]{8,}</title>`));
    expect(text).toMatch(new RegExp(`<desc id="picture-${name}-desc">[^<]{40,}</desc>`));
    expect(text).not.toMatch(/<script|<style|<image|<foreignObject|href|font-family|\son\w+=|style=/i);
  });

  it.each(drawn)("$name is drawn in the page's ink alone, so that it shows by day and by night", ({ text }) => {
    const colors = [...text.matchAll(/(?:fill|stroke)="([^"]*)"/g)].map(([, color]) => color);
    expect(colors.filter((color) => !["none", "currentColor", "var(--paper)"].includes(color!))).toEqual([]);
  });

  it.each(drawn)("$name holds no number that is none", ({ text }) => {
    expect(text).not.toMatch(/NaN|Infinity|undefined/);
  });
});

describe("the words in the pictures", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await openBrowser();
  });
  afterAll(() => browser.close());

  it("stay inside the picture and clear of each other", async () => {
    const page = await browser.newPage();
    await page.setContent(drawn.map(({ name, text }) => `<div id="${name}">${text}</div>`).join(""));
    const complaints = await page.evaluate(wordsOutOfPlace);
    expect(complaints).toEqual([]);
  });
});

/** Runs in the browser: words that a picture's edge cuts off, and words printed over others. */
function wordsOutOfPlace(): string[] {
  return [...document.querySelectorAll("svg")].flatMap((picture) => {
    const { width, height } = picture.viewBox.baseVal;
    const words = [...picture.querySelectorAll("text")].map((word) => ({ says: word.textContent, at: word.getBBox() }));
    const where = picture.parentElement!.id;
    const cut = words
      .filter(({ at }) => at.x < 0 || at.y < -2 || at.x + at.width > width || at.y + at.height > height + 2)
      .map(({ says }) => `${where}: "${says}" is cut off`);
    const over = words.flatMap((one, i) =>
      words
        .slice(i + 1)
        .filter(({ at }) => at.x < one.at.x + one.at.width && one.at.x < at.x + at.width)
        .filter(({ at }) => at.y + 3 < one.at.y + one.at.height && one.at.y + 3 < at.y + at.height)
        .map(({ says }) => `${where}: "${says}" over "${one.says}"`),
    );
    return [...cut, ...over];
  });
}

/** An argument that is read off a log's end with a tape. */
function isMeasured({ name }: { name: string }): boolean {
  return ["small", "large", "diameter", "diameters", "girth", "sweep", "widths"].includes(name);
}
