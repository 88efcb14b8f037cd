import { existsSync, statSync } from "node:fs";
import { join, resolve } from "node:path";
import type { Browser, Page } from "playwright-core";
import { TEST_ADDRESS } from "./build";

/** Where the page loads office.js from, and the same files on this machine. */
const OFFICE = "https://appsforoffice.microsoft.com/lib/1/hosted";
const OFFICE_FILES = resolve(import.meta.dirname, "../../../node_modules/@microsoft/office-js/dist");

export interface Visit {
  page: Page;
  /** Requests for anything but our own files and Microsoft's script. */
  strayRequests: string[];
  /** What the page complained of: errors thrown, and what its policy refused. */
  complaints: string[];
}

/** A page of the built folder in a browser that reaches nothing but that folder and the real office.js. */
export async function visit(browser: Browser, folder: string, name: string, options = {}): Promise<Visit> {
  const page = await browser.newPage(options);
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
    if (/Content Security Policy/.test(message.text())) complaints.push(message.text());
  });
  await page.goto(`${TEST_ADDRESS}/${name}`);
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
