import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openBrowser } from "../../browser";
import { tiny } from "../terminal/file/tiny";
import { openTryOut, type TryOut } from "./open-page";

let browser: Browser;
let sheet: TryOut;
beforeAll(async () => {
  const path = join(mkdtempSync(join(tmpdir(), "bole-")), "logs.xlsx");
  const logs =
    '<row r="1"><c r="A1"><v>20</v></c><c r="B1"><f>A1*2</f><v>40</v></c></row><row r="2"><c r="A2"><v>3</v></c></row>';
  writeFileSync(path, tiny({ sheets: { Logs: logs } }));
  browser = await openBrowser();
  sheet = await openTryOut(browser, undefined, path);
});
afterAll(async () => {
  await browser?.close();
  await sheet?.close();
});

/** What the page says once it has tried to save. */
async function triesToSave(): Promise<string | null> {
  const said = sheet.page.locator("#file-said");
  await sheet.page.getByRole("button", { name: "Save a copy", exact: true }).click();
  await expect.poll(() => said.textContent()).not.toMatch(/^(?:Working…)?$/);
  return said.textContent();
}

async function undo(address: string): Promise<void> {
  await sheet.select(address);
  await sheet.page.keyboard.press("Control+z");
}

describe("saving a copy", () => {
  it("is refused while rows of the file stand elsewhere, and done once that is undone", async () => {
    // The numbers of the rows stand at the left edge; this is the second. In the middle of the menu line stands a field.
    await sheet.page.mouse.click(20, 80, { button: "right" });
    await sheet.page
      .getByText("rows above")
      .first()
      .click({ position: { x: 5, y: 5 } });
    await sheet.select("B3");
    expect(await triesToSave()).toBe(
      "Nothing was saved: rows or columns were put in, taken out or moved on Logs, and charts, names and rules of the file would then point at other cells. Undo that with Ctrl+Z, or do it in Excel in the saved copy, and save again.",
    );
    await undo("B3");
    expect(await triesToSave()).toBe("Saved a copy as logs copy.xlsx. 0 cells of the workbook changed.");
  });

  it("is refused with a formula that Excel cannot read, by name", async () => {
    await sheet.type("D4", "=LET(a,1,a)");
    expect(await triesToSave()).toBe(
      "Nothing was saved: Logs!D4 holds =LET(a,1,a), which a copy cannot hold, since LET and LAMBDA give names of their own: change it or take it out.",
    );
    await sheet.select("D4");
    await sheet.page.keyboard.press("Delete");
  });

  it("says what it leaves out", async () => {
    await sheet.select("A1");
    await sheet.page.keyboard.press("Control+b");
    expect(await triesToSave()).toBe(
      "Saved a copy as logs copy.xlsx. 0 cells of the workbook changed. Left out: on the sheet Logs colours, fonts and borders that were changed.",
    );
  });

  it("complains of nothing but the refusal", () => {
    expect(sheet.complaints.filter((one) => !one.includes("status of 422"))).toEqual([]);
  });
});
