import { writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { chromium } from "playwright-core";
import { installedBrowser } from "../../browser.mjs";
import { logEnd } from "./log-end";

/** `npx tsx src/hosts/excel/icons/draw.ts`: draws the icon anew into assets/icons. */

/** The sizes Excel asks for, in pixels. */
const SIZES = [16, 20, 24, 32, 40, 48, 64, 80];

const FOLDER = fileURLToPath(new URL("../../../../assets/icons/", import.meta.url));
const browser = await chromium.launch({ executablePath: installedBrowser() });
const page = await browser.newPage();
for (const size of SIZES) {
  await page.setViewportSize({ width: size, height: size });
  await page.setContent(`<body style="margin:0">${logEnd(size)}</body>`);
  await page.screenshot({ path: `${FOLDER}bole-${size}.png`, omitBackground: true });
}
writeFileSync(`${FOLDER}bole.svg`, `${logEnd(80)}\n`);
await browser.close();
console.log(`Drew the icon in ${SIZES.length} sizes and as bole.svg`);
