import { existsSync, statSync } from "node:fs";
import { join, resolve } from "node:path";
import type { Browser, BrowserContextOptions, Page } from "playwright-core";
import { TEST_ADDRESS } from "./build";

/** Where the page loads office.js from, and the same files on this machine. */
export const OFFICE = "https://officeapis.public.onecdn.static.microsoft/1";
const OFFICE_FILES = resolve(import.meta.dirname, "../../../node_modules/@microsoft/office-js/dist");

/** office.js opens a frame there to report use to Microsoft. Our page's policy refuses it, and nothing else suffers. */
const OFFICE_TELEMETRY = "https://telemetryservice.firstpartyapps.oaspapps.com/";

export interface Visit {
  page: Page;
  /** Requests for anything but our own files and Microsoft's script. */
  strayRequests: string[];
  /** What the page complained of: errors thrown, and what its policy refused. */
  complaints: string[];
}

/** A page of the built folder in a browser that reaches nothing but that folder and the real office.js. */
export async function visit(
  browser: Browser,
  folder: string,
  name: string,
  options: BrowserContextOptions = {},
): Promise<Visit> {
  const visited = await emptyPage(browser, folder, options);
  await visited.page.goto(`${TEST_ADDRESS}/${name}`);
  return visited;
}

/**
 * The functions alone beside Microsoft's runtime for them. Inside Excel office.js loads that runtime by itself; outside
 * it is a file of its own, which does not share a page with office.js.
 */
export async function visitFunctions(browser: Browser, folder: string): Promise<Visit> {
  const visited = await emptyPage(browser, folder);
  await visited.page.goto(`${TEST_ADDRESS}/functions.json`);
  await visited.page.addScriptTag({ url: `${OFFICE}/custom-functions-runtime.js` });
  await visited.page.addScriptTag({ url: `${TEST_ADDRESS}/functions.js` });
  return visited;
}

export async function emptyPage(browser: Browser, folder: string, options: BrowserContextOptions = {}): Promise<Visit> {
  // A worker of the page would load past the routes below; tests/trust asks it on a real server.
  const page = await browser.newPage({ serviceWorkers: "block", ...options });
  const strayRequests: string[] = [];
  const complaints: string[] = [];
  await page.route("**/*", (route) => {
    const url = route
      .request()
      .url()
      .replace(/[?#].*$/, "");
    const path = fileFor(url, folder);
    if (path) return route.fulfill({ path });
    strayRequests.push(url);
    return route.abort();
  });
  page.on("pageerror", (error) => complaints.push(error.message));
  page.on("console", (message) => {
    const text = message.text();
    if (/Content Security Policy/.test(text) && !text.includes(OFFICE_TELEMETRY)) complaints.push(text);
  });
  return { page, strayRequests, complaints };
}

function fileFor(url: string, folder: string): string | undefined {
  const places = [
    [TEST_ADDRESS, folder],
    [OFFICE, OFFICE_FILES],
  ] as const;
  for (const [address, files] of places) {
    const path = join(files, url.slice(address.length));
    if (url.startsWith(`${address}/`) && existsSync(path) && statSync(path).isFile()) return path;
  }
  return undefined;
}
