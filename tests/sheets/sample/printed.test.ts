import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, describe, expect, it } from "vitest";
import { MARGINS_IN } from "../../../src/sheets/paper";
import { atHand, LIBRE_OFFICE, PDF_TOOLS } from "./office";
import { SAMPLE_VALUES } from "./parts";
import { type PrintedPage, printedPages, sheetOf, type Word } from "./printed-pages";

/** Points: smaller type cannot be read in the hand. LibreOffice rounds a size to tenths. */
const LEAST_TYPE = 8 - 0.1;
/** From the top of the tallest letter to the foot of the deepest, to the size of type: Carlito, Calibri's double. */
const CARLITO_LINE = 1.2207;
/** Points: what begins in the margin belongs to the next page, and is not seen on this one. */
const MARGIN = 72 * MARGINS_IN.right;
/** A page with fewer is a column or a row that did not go onto the page before it. */
const FEWEST_WORDS = 25;

const folder = mkdtempSync(join(tmpdir(), "bole-printed-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe("the pages that the sample prints", () => {
  it("can be read, hold no error and cut nothing", { timeout: 900_000 }, (test) => {
    if (!atHand(LIBRE_OFFICE) || !atHand(PDF_TOOLS))
      return test.skip("LibreOffice is not here and could not be installed: this check did not run");
    const pages = printedPages(fileURLToPath(SAMPLE_VALUES), folder);
    expect(pages.length).toBeGreaterThan(60);
    const faults = pages.flatMap((page, at) => faultsOf(page).map((fault) => `${at + 1} ${sheetOf(page)}: ${fault}`));
    expect(faults).toEqual([]);
  });
});

function faultsOf({ words, width, height }: PrintedPage): string[] {
  const said = (what: string, wrong: (word: Word, at: number) => boolean) => {
    const found = words.filter(wrong).map(({ text }) => text);
    return found.length > 0 ? [`${what}: ${found.slice(0, 4).join(" ")}`] : [];
  };
  const typeOf = ({ top, bottom }: Word) => (bottom - top) / CARLITO_LINE;
  // Two sentences say what it means that a cell shows an error.
  const isTold = (at: number) => words[at - 1]?.text === "shows" || words[at + 1]?.text === "here";
  return [
    ...said("small type", (word) => typeOf(word) < LEAST_TYPE),
    ...said("a number that its column is too narrow for", ({ text }) => /^#{3,}$/.test(text)),
    ...said("an error", ({ text }, at) => /^#(NAME\?|REF!|DIV\/0!|NUM!)/.test(text) && !isTold(at)),
    ...said(
      "cut by the edge of the paper",
      ({ left, right, top, bottom }) =>
        (left < 0 && right > 0) || (left < width - MARGIN && right > width) || (top < height && bottom > height),
    ),
    ...(words.length < FEWEST_WORDS ? [`nearly nothing on it: ${words.map(({ text }) => text).join(" ")}`] : []),
  ];
}
