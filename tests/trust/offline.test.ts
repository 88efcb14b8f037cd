import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, relative, resolve } from "node:path";
import type { Browser, BrowserContext, Page } from "playwright-core";
import { afterEach, beforeAll, beforeEach, afterAll, describe, expect, it } from "vitest";
import { offlineList, workerWith } from "../../src/hosts/excel/offline/list";
import { openBrowser } from "../browser";
import { builtFolder, filesUnder } from "../hosts/excel/build";
import { staticHost, type StaticHost } from "./static-host";

const OFFICE_FILES = resolve(import.meta.dirname, "../../node_modules/@microsoft/office-js/dist");
const MICROSOFT = "https://officeapis.public.onecdn.static.microsoft";

/** The add-in on a host of its own, and Microsoft's script on another. Both can be shut down. */
let browser: Browser;
let context: BrowserContext;
let page: Page;
let office: StaticHost;
let host: StaticHost;
let places: string;
let served: string;

beforeAll(async () => void (browser = await openBrowser()));
afterAll(() => browser.close());

beforeEach(async () => {
  places = mkdtempSync(join(tmpdir(), "bole-offline-"));
  office = await staticHost((path) => join(OFFICE_FILES, path.replace(/^1\//, "")));
  served = await version("first");
  host = await staticHost((path) => join(served, path));
  context = await browser.newContext();
  page = await context.newPage();
});

afterEach(async () => {
  await context.close();
  await Promise.all([host.close(), office.close()]);
  rmSync(places, { recursive: true });
});

/** The built folder as it would be after a change of some files. Microsoft's address is moved to this machine. */
async function version(name: string, changes: Record<string, (text: string) => string> = {}): Promise<string> {
  const folder = join(places, name);
  cpSync(await builtFolder(), folder, { recursive: true });
  const change = (file: string, edit: (text: string) => string) =>
    writeFileSync(join(folder, file), edit(readFileSync(join(folder, file), "utf8")));
  for (const file of ["taskpane.html", "offline.js"])
    change(file, (text) => text.replaceAll(MICROSOFT, office.address));
  for (const [file, edit] of Object.entries(changes)) change(file, edit);
  const built = Object.fromEntries(
    filesUnder(folder).map((path) => [relative(folder, path).replaceAll("\\", "/"), readFileSync(path)]),
  );
  change("offline.js", (text) => workerWith(offlineList(built), text.slice(text.indexOf("\n") + 1)));
  return folder;
}

const titled = (title: string) => ({
  "taskpane.html": (html: string) => html.replace(/<title>.*<\/title>/, `<title>${title}</title>`),
});

/** Opens the pane and waits until the worker has kept everything. */
async function openPane(on: Page = page): Promise<void> {
  await on.goto(`${host.address}/taskpane.html?_host_Info=Excel$Win32$16.01$en-US`);
  await on.evaluate(async () => (await navigator.serviceWorker.ready).active?.state);
  await expect
    .poll(() => on.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.active?.state))
    .toBe("activated");
}

/** Opens the pane as on any later day, served by the worker. */
async function openPaneAgain(): Promise<void> {
  await openPane();
  await page.reload();
  expect(await page.evaluate(() => navigator.serviceWorker.controller !== null)).toBe(true);
}

/** A second look at the host for another version, as the browser takes by itself when a page is opened. */
function lookForUpdate(on: Page = page): Promise<string> {
  return on.evaluate(async () => {
    const registration = (await navigator.serviceWorker.getRegistration())!;
    const started = new Promise<ServiceWorker>((resolve) =>
      registration.addEventListener("updatefound", () => resolve(registration.installing!)),
    );
    void registration.update();
    const worker = await started;
    while (worker.state === "installing") await new Promise((resolve) => setTimeout(resolve, 50));
    return worker.state;
  });
}

async function withoutNetwork(): Promise<void> {
  await context.setOffline(true);
  await Promise.all([host.close(), office.close()]);
}

const cachesHeld = () => page.evaluate(() => caches.keys());

/** What a worksheet function answers in the pane's page, where Excel calls it. */
function answerInCell(on: Page = page): Promise<unknown> {
  return on.evaluate(() => {
    const kept = CustomFunctions as unknown as {
      _association: { mappings: Record<string, (...cells: unknown[]) => unknown[][]> };
    };
    return kept._association.mappings["LOGSCALE"]!([[20]], [[12]], [["Doyle"]])[0]![0];
  });
}

describe("without a network, after one visit", () => {
  it("the pane opens and a function answers", async () => {
    await openPane();
    await expect
      .poll(() => page.evaluate(async (url) => Boolean(await caches.match(url)), `${office.address}/1/office.js`))
      .toBe(true);
    await withoutNetwork();
    await page.reload();
    expect(await page.title()).toBe("Bole: timber formulas");
    expect(await page.locator("details.entry").count()).toBeGreaterThan(80);
    expect(await answerInCell()).toBe(192);
  });

  it("reference pages, help, their style and the sample workbook open", async () => {
    await openPane();
    await withoutNetwork();
    for (const [path, title] of [
      ["reference/index.html", "All functions · Bole"],
      ["reference/LOGWEIGHT.html", "LOGWEIGHT · Bole"],
      ["help.html", "Help and setting up · Bole"],
    ]) {
      await page.goto(`${host.address}/${path}`);
      expect(await page.title()).toBe(title);
      expect(await page.evaluate(() => document.styleSheets[0]!.cssRules.length)).toBeGreaterThan(5);
    }
    await page.goto(`${host.address}/taskpane.html`);
    const bytes = await page.evaluate(async () => (await (await fetch("bole-sample.xlsx")).arrayBuffer()).byteLength);
    expect(bytes).toBe(readFileSync(join(served, "bole-sample.xlsx")).length);
  });

  it("the list of functions is there even if Microsoft's script was never kept", async () => {
    await openPane();
    await page.evaluate(async () => {
      for (const name of await caches.keys()) if (name.endsWith("office.js")) await caches.delete(name);
    });
    await withoutNetwork();
    const other = await context.newPage();
    await other.goto(`${host.address}/taskpane.html`);
    expect(await other.locator("details.entry").count()).toBeGreaterThan(80);
  });
});

describe("on a slow network", () => {
  it("the second start asks the host for nothing but whether there is another version", async () => {
    await openPaneAgain();
    host.asked();
    await page.reload();
    await expect.poll(() => page.locator("details.entry").count()).toBeGreaterThan(80);
    expect(host.asked().filter((path) => path !== "offline.js")).toEqual([]);
  });

  it("an update loads only what has changed", async () => {
    await openPaneAgain();
    served = await version("second", titled("Second"));
    host.asked();
    expect(await lookForUpdate()).toBe("installed");
    expect(host.asked().filter((path) => path !== "offline.js")).toEqual(["taskpane.html"]);
  });
});

describe("two versions", () => {
  it("never meet: the old one stays whole while it is open, the next start is the new one, and the old is thrown away", async () => {
    await openPaneAgain();
    const before = await cachesHeld();
    const marked = (mark: string) => ({
      ...titled(mark),
      "taskpane.css": (css: string) => `${css}\n:root { --mark: ${mark} }`,
    });
    const markIn = (on: Page) =>
      on.evaluate(() => getComputedStyle(document.documentElement).getPropertyValue("--mark").trim());
    served = await version("second", marked("Second"));
    expect(await lookForUpdate()).toBe("installed");
    await page.reload();
    expect([await page.title(), await markIn(page)]).toEqual(["Bole: timber formulas", ""]);

    await page.goto("about:blank");
    const next = await context.newPage();
    await page.close();
    await expect
      .poll(async () => {
        await next.goto(`${host.address}/taskpane.html`);
        const seen = [await next.title(), await markIn(next)];
        await next.goto("about:blank");
        return seen;
      })
      .toEqual(["Second", "Second"]);
    await next.goto(`${host.address}/taskpane.html`);
    const after = await next.evaluate(() => caches.keys());
    expect(after.filter((name) => name.endsWith("office.js"))).toEqual(
      before.filter((name) => name.endsWith("office.js")),
    );
    expect(after.length).toBe(before.length);
    expect(after).not.toEqual(before);
    page = next;
  });

  it("do not mix while the host is only half filled: the old one serves until the new one is all there", async () => {
    await openPaneAgain();
    served = await version("half", titled("Half"));
    const whole = readFileSync(join(served, "functions.js"));
    writeFileSync(join(served, "functions.js"), "throw new Error('of another version');");
    // The list names a hash that the file on the host has not.
    const list = readFileSync(join(served, "offline.js"), "utf8");
    writeFileSync(
      join(served, "offline.js"),
      list.replace(/"functions\.js":"sha256-[^"]+"/, `"functions.js":"sha256-${"A".repeat(43)}="`),
    );
    expect(await lookForUpdate()).toBe("redundant");
    await page.reload();
    expect(await page.title()).toBe("Bole: timber formulas");
    expect(await answerInCell()).toBe(192);
    writeFileSync(join(served, "functions.js"), whole);
    writeFileSync(join(served, "offline.js"), list);
    expect(await lookForUpdate()).toBe("installed");
  });
});

describe("the list of what is kept", () => {
  it("names every file of the built folder but what no page asks for, each by the hash of its content", async () => {
    const folder = await builtFolder();
    const line = readFileSync(join(folder, "offline.js"), "utf8").split("\n")[0]!;
    const { files } = JSON.parse(line.slice(line.indexOf("{"), -1)) as { files: Record<string, string> };
    const built = filesUnder(folder).map((path) => relative(folder, path).replaceAll("\\", "/"));
    expect(Object.keys(files).sort()).toEqual(
      built.filter((name) => !["_headers", "manifest.xml", "offline.js"].includes(name)).sort(),
    );
    for (const [name, hash] of Object.entries(files))
      expect(offlineList({ [name]: readFileSync(join(folder, name)) }).files[name], name).toBe(hash);
  });
});
