import { renameSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { ROOT } from "../../catalog/read-catalog";
import { makeSample } from "../../sheets/sample/make";
import { readMaterial } from "../../sheets/sample/material";
import { startEngine } from "../../engine/engine";

/** Writes the sample workbook, every value in it calculated by the engine: npm run sample. */
const path = join(ROOT, "assets/bole-sample.xlsx");
const engine = await startEngine();
const bytes = await makeSample(readMaterial(), async (blank) => {
  const opened = await engine.open(blank);
  return (sheet, address) => opened.value(sheet, address);
});
engine.stop();
writeFileSync(`${path}.part`, bytes);
renameSync(`${path}.part`, path);
console.log(`Wrote ${path}: ${Math.round(bytes.length / 1024)} kB.`);
