import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { parse } from "csv-parse/sync";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { startEngine, type Engine } from "../../../../src/engine/engine";
import { recalculated } from "../../../../src/hosts/terminal/file/recalc";
import { shared } from "../../../../src/hosts/terminal/file/share";
import { yard } from "./yard";

const AT = new Date("2026-03-01T00:00:00Z");
const SAMPLE = join(import.meta.dirname, "../../../../assets/bole-sample.xlsx");
const INSTALLED = spawnSync("soffice", ["--version"]).status === 0;

/** Every sheet of a workbook as comma-separated values: cells as calculated, not as formatted. */
const EVERY_SHEET = "csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,false,false,false,false,-1";

let engine: Engine;
let folder: string;
beforeAll(async () => {
  engine = await startEngine();
  folder = mkdtempSync(join(tmpdir(), "bole-office-"));
});
afterAll(() => {
  engine.stop();
  rmSync(folder, { recursive: true, force: true });
});

/** What LibreOffice shows on a sheet of the workbook. */
function opened(bytes: Uint8Array, name: string, sheet: string): string[][] {
  const file = join(folder, `${name}.xlsx`);
  writeFileSync(file, bytes);
  const profile = `-env:UserInstallation=file://${join(folder, "profile")}`;
  const done = spawnSync("soffice", [profile, "--headless", "--convert-to", EVERY_SHEET, "--outdir", folder, file]);
  expect(done.status, String(done.stderr)).toBe(0);
  return parse(readFileSync(join(folder, `${name}-${sheet}.csv`), "utf8"), { relax_column_count: true }) as string[][];
}

describe("LibreOffice, another program than Excel", () => {
  if (!INSTALLED) {
    it("is not installed here: whether it opens the results was not checked", () => expect(INSTALLED).toBe(false));
    return;
  }

  it("opens a shared workbook and shows its values", async () => {
    const { bytes } = await shared(yard(), engine, AT);
    const sheet = opened(bytes, "yard", "Logs");
    expect(sheet.slice(1, 4).map((row) => row[2])).toEqual(["192", "300", "#N/A"]);
    expect(sheet[5]![0]).toBe("Total 1 < 2");
    expect(sheet[5]![3]).toBe("492");
  });

  it("opens the shared sample workbook, sheet that says what was done included", async () => {
    const { bytes } = await shared(readFileSync(SAMPLE), engine, AT);
    const about = opened(bytes, "sample", "About this copy");
    expect(about).toContainEqual(["Values taken", "2026-03-01"]);
    expect(JSON.stringify(about)).not.toContain("#NAME?");
    const book = await engine.open(readFileSync(SAMPLE));
    const log = parse(readFileSync(join(folder, "sample-Log book.csv"), "utf8"), {
      relax_column_count: true,
    }) as string[][];
    const cells = book
      .formulaCells()
      .filter(({ sheet, recalculated: answer }) => sheet === "Log book" && typeof answer === "number");
    expect(cells.length).toBeGreaterThan(100);
    for (const { address, recalculated: answer } of cells) {
      const [, letter = "", row = ""] = /^([A-Z])(\d+)$/.exec(address)!;
      const shown = Number(log[Number(row) - 1]![letter.charCodeAt(0) - 65]);
      // LibreOffice prints fifteen digits.
      expect(Math.abs(shown - (answer as number)), address).toBeLessThanOrEqual(
        1e-9 * Math.max(1, Math.abs(answer as number)),
      );
    }
  });

  it("opens a recalculated workbook and shows the new values", async () => {
    const { bytes } = await recalculated(yard(), engine, AT);
    const sheet = opened(bytes, "again", "Logs");
    // It keeps the numbers of functions that it does not know; their errors it calculates itself, to #NAME?.
    expect(sheet.slice(1, 4).map((row) => row[2])).toEqual(["192", "300", "#NAME?"]);
  });
});
