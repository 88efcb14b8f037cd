import type { ICellData, IWorkbookData } from "@univerjs/core";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { openBrowser } from "../../browser";
import { said } from "../excel/pane-page";
import { openTryOut, type TryOut } from "./open-page";

/** An invented sheet: two tables side by side under titles, the left one with a blank row and a sum. */
const ROWS: (string | number)[][] = [
  ["Logs of an invented yard", "", "", "", "Boards"],
  ["Tag", "Dia (cm)", "Len (m)", "", "Thk", "Wd", "Lth"],
  ["a", 52, 2.4, "", 1, 8, 10],
  ["b", 47, 3.1, "", 2, 6, 12],
  ["", "", "", "", 1.5, 7, 8],
  ["c", 61, 2.9, "", "", "", ""],
  ["Total", "=SUM(B3:B6)", "", "", "", "", ""],
];

let browser: Browser;
let sheet: TryOut;

beforeAll(async () => {
  browser = await openBrowser();
  sheet = await openTryOut(browser, withOwnSheet);
  await sheet.openTab("My yard");
});

afterAll(async () => {
  await browser?.close();
  await sheet?.close();
});

function withOwnSheet(workbook: IWorkbookData): void {
  const cell = (content: string | number): ICellData =>
    typeof content === "string" && content.startsWith("=") ? { f: content } : content === "" ? {} : { v: content };
  const cellData = Object.fromEntries(
    ROWS.map((line, row) => [row, Object.fromEntries(line.map((content, column) => [column, cell(content)]))]),
  );
  workbook.sheets["own"] = { id: "own", name: "My yard", rowCount: 30, columnCount: 9, cellData };
  workbook.sheetOrder.splice(1, 0, "own");
}

describe("fitting columns in the try-out sheet", () => {
  it("fits the table round the chosen cell and adds its column apart from the table beside it", async () => {
    const { page } = sheet;
    const fit = page.getByRole("region", { name: "Fit LOGSCALE to my sheet" });
    await sheet.select("B4");
    await page.getByLabel("What do you want to know?").fill("LOGSCALE");
    await page.locator("details.entry > summary").first().click();
    await expect.poll(() => fit.locator("code").textContent()).toBe('=BOLE.LOGSCALE(B3&" cm", C3&" m")');
    await fit.getByRole("button", { name: "Add the column" }).click();
    await expect.poll(() => said(page)).toBe("My yard!I2:I7 now holds Board feet");
    const shown = Number((await fit.locator(".rows strong").first().textContent())!.replace(",", ""));
    await sheet.answering("I3", (answer) => Number(Number(answer).toPrecision(6))).toBe(shown);
    await sheet.answering("I6", (answer) => Number(answer) > 0).toBe(true);
    for (const [address, holds] of Object.entries({
      I5: "An empty cell",
      I7: "An empty cell",
      E3: "1",
      D2: "An empty",
    })) {
      await sheet.select(address);
      await sheet.says(holds);
    }
  });

  it("follows the choice to the other table", async () => {
    const { page } = sheet;
    await page.getByLabel("What do you want to know?").fill("BOARDFEET");
    await page.locator("details.entry > summary").first().click();
    const fit = page.getByRole("region", { name: "Fit BOARDFEET to my sheet" });
    await sheet.select("F4");
    await expect.poll(() => fit.locator("code").textContent()).toBe("=BOLE.BOARDFEET(E3, F3, G3)");
    await sheet.select("A25");
    await fit.waitFor({ state: "hidden" });
  });

  it("complains of nothing", () => expect(sheet.complaints).toEqual([]));
});
