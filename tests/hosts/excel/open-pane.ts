import type { Browser } from "playwright-core";
import { afterAll, beforeAll, beforeEach } from "vitest";
import { openBrowser } from "../../browser";
import { visit, type Visit } from "./browser-page";
import { builtFolder } from "./build";
import type { FakeWorkbook } from "./fake-cells";
import { goTo, NARROW, type Part } from "./pane-page";
import { standIn } from "./stand-in";

/** The pane of a test file: opened once, and before every test loaded anew beside a workbook, at one of its parts. */
export function paneBeside(book: FakeWorkbook, part: Part): Visit & { folder: string } {
  let browser: Browser;
  const pane = {} as Visit & { folder: string };

  beforeAll(async () => {
    const folder = await builtFolder();
    browser = await openBrowser();
    Object.assign(pane, await visit(browser, folder, "taskpane.html", { viewport: NARROW }), { folder });
  });
  afterAll(() => browser.close());

  beforeEach(async () => {
    await pane.page.reload();
    await standIn(pane.page, book);
    await goTo(pane.page, part);
  });
  return pane;
}
