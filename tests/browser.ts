import { existsSync } from "node:fs";
import { chromium, type Browser } from "playwright-core";

/** Where Chrome, Edge and Chromium are installed on Debian, macOS and Windows. */
const USUAL_PLACES = [
  process.env["BOLE_BROWSER"],
  "/usr/bin/chromium",
  "/usr/bin/chromium-browser",
  "/usr/bin/google-chrome",
  "/usr/bin/microsoft-edge",
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
  "/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge",
  `${process.env["ProgramFiles"]}\\Google\\Chrome\\Application\\chrome.exe`,
  `${process.env["ProgramFiles(x86)"]}\\Google\\Chrome\\Application\\chrome.exe`,
  `${process.env["ProgramFiles(x86)"]}\\Microsoft\\Edge\\Application\\msedge.exe`,
  `${process.env["ProgramFiles"]}\\Microsoft\\Edge\\Application\\msedge.exe`,
];

/** A browser without a window, that asks nothing of the network by itself. */
export async function openBrowser(): Promise<Browser> {
  const executablePath = USUAL_PLACES.find((place) => place && existsSync(place));
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
