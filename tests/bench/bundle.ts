import { readFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { openBrowser } from "../browser";
import { emptyPage, OFFICE } from "../hosts/excel/browser-page";
import { builtFolder, TEST_ADDRESS } from "../hosts/excel/build";
import { callInBatch, FILE_SETS, openAsExcel, tenThousandCalls } from "../hosts/excel/driven-as-excel";
import { median } from "./side-by-side";

/**
 * What the functions bundle weighs on the wire, how long a fresh page takes from nothing to its first answer, and how long
 * 10,000 single calls take that Excel sends in one batch, over Microsoft's runtime: first their messages alone, for a
 * function that the add-in does not have, then with the answers.
 */
const RUNS = 5;

const folder = await builtFolder();
const kilobytes = (name: string) => (gzipSync(readFileSync(join(folder, name))).length / 1024).toFixed(1);
for (const name of ["functions.js", "taskpane.js", "functions.json"])
  console.log(`${name}: ${kilobytes(name)} KB gzipped`);

const browser = await openBrowser();
const times: number[] = [];
for (let run = 0; run < RUNS; run++) times.push(await timeToFirstAnswer());
const batches: { answered: number; unknown: number }[] = [];
for (let run = 0; run < RUNS; run++) batches.push(await timesOfBatches());
await browser.close();
times.sort((a, b) => a - b);
console.log(
  `First answer ${times[Math.floor(RUNS / 2)]!.toFixed(0)} ms after the functions bundle was asked for ` +
    `(middle of ${RUNS}; ${times[0]!.toFixed(0)} to ${times.at(-1)!.toFixed(0)} ms)`,
);
const [answered, unknown] = [median(batches.map((b) => b.answered)), median(batches.map((b) => b.unknown))];
console.log(
  `10,000 single calls in one batch: ${answered.toFixed(0)} ms; the same with a function that is not there: ` +
    `${unknown.toFixed(0)} ms; ratio ${(answered / unknown).toFixed(2)} (middle of ${RUNS})`,
);

async function timesOfBatches() {
  const { page } = await openAsExcel(browser, folder, FILE_SETS[0].info);
  const timed = async (name: string) => {
    const started = performance.now();
    await callInBatch(page, tenThousandCalls(name));
    return performance.now() - started;
  };
  await timed("NOSUCHFUNCTION"); // The first batch warms the page.
  const unknown = await timed("NOSUCHFUNCTION");
  const answered = await timed("KERFLOSS");
  await page.close();
  return { answered, unknown };
}

async function timeToFirstAnswer(): Promise<number> {
  const { page } = await emptyPage(browser, folder);
  await page.goto(`${TEST_ADDRESS}/functions.json`);
  await page.addScriptTag({ url: `${OFFICE}/custom-functions-runtime.js` });
  const taken = await page.evaluate(async (address) => {
    const started = performance.now();
    await new Promise((resolve, reject) => {
      const script = document.createElement("script");
      script.addEventListener("load", resolve);
      script.addEventListener("error", reject);
      script.src = `${address}/functions.js`;
      document.head.append(script);
    });
    const kept = CustomFunctions as unknown as {
      _association: { mappings: Record<string, (...cells: unknown[]) => unknown[][]> };
    };
    const answer = kept._association.mappings["LOGSCALE"]!([[20]], [[12]], [["Doyle"]])[0]![0];
    if (answer !== 192) throw new Error(`LOGSCALE(20, 12, "Doyle") answered ${String(answer)}, not 192`);
    return performance.now() - started;
  }, TEST_ADDRESS);
  await page.close();
  return taken;
}
