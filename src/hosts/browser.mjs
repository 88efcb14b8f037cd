import { existsSync } from "node:fs";

/** Where Chrome, Edge and Chromium are installed on Debian, macOS and Windows. */
const USUAL_PLACES = [
  "/usr/bin/chromium",
  "/usr/bin/chromium-browser",
  "/usr/bin/google-chrome",
  "/usr/bin/microsoft-edge",
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
  "/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge",
  "/Applications/Chromium.app/Contents/MacOS/Chromium",
  ...["ProgramFiles", "ProgramFiles(x86)", "LOCALAPPDATA"].flatMap((folder) => [
    `${process.env[folder]}\\Google\\Chrome\\Application\\chrome.exe`,
    `${process.env[folder]}\\Microsoft\\Edge\\Application\\msedge.exe`,
  ]),
];

/** The program of an installed browser, or undefined. BOLE_BROWSER names another. */
export function installedBrowser() {
  return [process.env.BOLE_BROWSER, ...USUAL_PLACES].find((place) => place && existsSync(place));
}
