import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, relative, resolve } from "node:path";
import type { Browser, BrowserContext, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, expect } from "vitest";
import { offlineList, workerWith } from "../../src/hosts/excel/offline/list";
import { openBrowser } from "../browser";
import { builtFolder, filesUnder } from "../hosts/excel/build";
import { staticHost, type StaticHost } from "./static-host";

const OFFICE_FILES = resolve(import.meta.dirname, "../../node_modules/@microsoft/office-js/dist");
const MICROSOFT = "https://officeapis.public.onecdn.static.microsoft";

/** Files of the built folder by name, and what is changed in them. */
type Changes = Record<string, (text: string) => string>;

interface Opened {
  context: BrowserContext;
  page: Page;
  host: StaticHost;
  office: StaticHost;
  /** The folder that the host serves. */
  served: string;
}

/** For every test anew: the add-in on a host of its own, and Microsoft's script on another. Both can be shut down. */
export function offlineAddIn() {
  let browser: Browser;
  let places: string;
  const now = {} as Opened;

  beforeAll(async () => void (browser = await openBrowser()));
  afterAll(() => browser.close());

  beforeEach(async () => {
    places = mkdtempSync(join(tmpdir(), "bole-offline-"));
    now.office = await staticHost((path) => join(OFFICE_FILES, path.replace(/^1\//, "")));
    await serve("first");
    now.host = await staticHost((path) => join(now.served, path));
    now.context = await browser.newContext();
    now.page = await now.context.newPage();
  });

  afterEach(async () => {
    await now.context.close();
    await closeHosts();
    rmSync(places, { recursive: true });
  });

  const closeHosts = () => Promise.all([now.host.close(), now.office.close()]);

  /** From now on the host serves the built folder as it would be after some changes, under Microsoft's moved address. */
  async function serve(version: string, changes: Changes = {}): Promise<void> {
    const folder = join(places, version);
    cpSync(await builtFolder(), folder, { recursive: true });
    const moved = (text: string) => text.replaceAll(MICROSOFT, now.office.address);
    change(folder, { "taskpane.html": moved, "offline.js": moved });
    change(folder, changes);
    const built = Object.fromEntries(
      filesUnder(folder).map((path) => [relative(folder, path).replaceAll("\\", "/"), readFileSync(path)]),
    );
    change(folder, { "offline.js": (text) => workerWith(offlineList(built), text.slice(text.indexOf("\n") + 1)) });
    now.served = folder;
  }

  /** Opens the pane and waits until the worker has kept everything. */
  async function openPane(): Promise<void> {
    const { page, host } = now;
    await page.goto(`${host.address}/taskpane.html?_host_Info=Excel$Win32$16.01$en-US`);
    await page.evaluate(async () => (await navigator.serviceWorker.ready).active?.state);
    await expect
      .poll(() => page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.active?.state))
      .toBe("activated");
  }

  return Object.assign(now, {
    serve,
    openPane,
    /** Opens the pane as on any later day, served by the worker. */
    openPaneAgain: async (): Promise<void> => {
      await openPane();
      await now.page.reload();
      expect(await now.page.evaluate(() => navigator.serviceWorker.controller !== null)).toBe(true);
    },
    withoutNetwork: async (): Promise<void> => {
      await now.context.setOffline(true);
      await closeHosts();
    },
  });
}

function change(folder: string, changes: Changes): void {
  for (const [file, edit] of Object.entries(changes))
    writeFileSync(join(folder, file), edit(readFileSync(join(folder, file), "utf8")));
}

/** A second look at the host for another version, as the browser takes by itself when a page is opened. */
export function lookForUpdate(page: Page): Promise<string> {
  return page.evaluate(async () => {
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

export const cachesHeld = (page: Page) => page.evaluate(() => caches.keys());

/** What a worksheet function answers in the pane's page, where Excel calls it. */
export function answerInCell(page: Page): Promise<unknown> {
  return page.evaluate(() => {
    const kept = CustomFunctions as unknown as {
      _association: { mappings: Record<string, (...cells: unknown[]) => unknown[][]> };
    };
    return kept._association.mappings["LOGSCALE"]!([[20]], [[12]], [["Doyle"]])[0]![0];
  });
}
