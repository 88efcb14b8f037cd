import { mkdirSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { openBrowser } from "../../tests/browser";
import { logEnd } from "./log-end";

/** The sizes Excel asks for, in pixels. */
const SIZES = [16, 20, 24, 32, 40, 48, 64, 80];

const HERE = fileURLToPath(new URL(".", import.meta.url));
const browser = await openBrowser();
const page = await browser.newPage();
mkdirSync(HERE, { recursive: true });
for (const size of SIZES) {
  await page.setViewportSize({ width: size, height: size });
  await page.setContent(`<body style="margin:0">${logEnd(size)}</body>`);
  await page.screenshot({ path: `${HERE}bole-${size}.png`, omitBackground: true });
}
writeFileSync(`${HERE}bole.svg`, `${logEnd(80)}\n`);
await browser.close();
console.log(`Drew the icon in ${SIZES.length} sizes and as bole.svg`);
