import { chromium, type Browser } from "playwright-core";
import { installedBrowser } from "../src/hosts/browser.mjs";

/** A browser without a window, that asks nothing of the network by itself. */
export async function openBrowser(): Promise<Browser> {
  const executablePath = installedBrowser();
  if (!executablePath) throw new Error("No Chrome, Edge or Chromium found; set BOLE_BROWSER to the program's path");
  return chromium.launch({
    executablePath,
    args: [
      "--headless",
      "--no-sandbox",
      "--disable-gpu",
      "--disable-quic",
      "--no-first-run",
      "--disable-background-networking",
      "--disable-component-update",
      "--disable-sync",
    ],
  });
}
