import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openBrowser } from "../../browser";
import { asExcelSaves } from "../terminal/file/excel-traits";
import { openTryOut, type TryOut } from "./open-page";

let browser: Browser;
let sheet: TryOut;

beforeAll(async () => {
  const path = join(mkdtempSync(join(tmpdir(), "bole-")), "logs.xlsx");
  writeFileSync(path, asExcelSaves());
  browser = await openBrowser();
  sheet = await openTryOut(browser, undefined, path);
});
afterAll(async () => {
  await browser?.close();
  await sheet?.close();
});

describe("a workbook as Excel itself saves it, in the try-out page", () => {
  // Of the @ before the call in E1 its brackets stay: a call with single cells has a single answer with and without it.
  it.each([
    ["C1", '=BOLE.LOGSCALE(A1,B1,"Doyle")', 192],
    ["D1", '=bole.LOGSCALE(A1,B1,"BOLE.X(")+1', "#VALUE!"],
    ["E1", '=(BOLE.LOGSCALE(A1,B1,"Doyle"))', 192],
    ["F1", "=NOW()*0+C1", 192],
  ])("shows %s as the formula that a person would type, and answers it", async (address, formula, answer) => {
    await sheet.answering(address).toBe(String(answer));
    expect(sheet.workbook.formulaCells().find((cell) => cell.address === address)?.formula).toBe(formula);
  });

  it("answers anew when a cell that the array form leans on is typed over", async () => {
    await sheet.type("A1", "24");
    await sheet.answering("C1", Number).toBe(300);
    await sheet.answering("F1", Number).toBe(300);
  });
});
