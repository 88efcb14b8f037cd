import { renameSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { ROOT } from "../../catalog/read-catalog";
import { makeSample } from "../../sheets/sample/make";
import { readMaterial } from "../../sheets/sample/material";
import { startEngine } from "../../engine/engine";
import { shared } from "./file/share";

/** The hour that the values copy bears, so that the same sample gives the same copy. */
const TAKEN = new Date(Date.UTC(2026, 0, 1));

/**
 * Writes the sample workbook, every value in it calculated by the engine, and beside it the copy that holds values in
 * place of Bole's formulas, for LibreOffice and everyone without the add-in: npm run sample.
 */
const engine = await startEngine();
const sample = await makeSample(readMaterial(), async (blank) => {
  const opened = await engine.open(blank);
  return (sheet, address) => opened.value(sheet, address);
});
const values = await shared(sample, engine, TAKEN);
engine.stop();
write("bole-sample.xlsx", sample);
write("bole-sample-values.xlsx", values.bytes);

/** Moves the file to its place whole, so that nobody ever sees half of it. */
function write(name: string, bytes: Uint8Array): void {
  const path = join(ROOT, "assets", name);
  writeFileSync(`${path}.part`, bytes);
  renameSync(`${path}.part`, path);
  console.log(`Wrote ${path}: ${Math.round(bytes.length / 1024)} kB.`);
}
