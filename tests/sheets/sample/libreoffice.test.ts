import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { afterAll, describe, expect, it } from "vitest";
import { atHand, LIBRE_OFFICE } from "./office";
import { partsOf, SAMPLE_VALUES, writtenCells } from "./parts";

const folder = mkdtempSync(join(tmpdir(), "bole-sample-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe("the sample workbook in another spreadsheet program", () => {
  it(
    "opens in LibreOffice as its copy of values, which shows every number of the sample",
    { timeout: 900_000 },
    async (test) => {
      if (!atHand(LIBRE_OFFICE))
        return test.skip("LibreOffice is not here and could not be installed: this check did not run");
      const profile = pathToFileURL(join(folder, "profile")).href;
      const options = [`-env:UserInstallation=${profile}`, "--headless", "--convert-to", "xlsx:Calc MS Excel 2007 XML"];
      execFileSync("soffice", [...options, "--outdir", folder, fileURLToPath(SAMPLE_VALUES)], {
        stdio: "pipe",
        timeout: 300_000,
      });
      const before = numbersOf(partsOf());
      const after = numbersOf(partsOf(readFileSync(join(folder, "bole-sample-values.xlsx"))));
      expect(before.size).toBeGreaterThan(1200);
      const lost = [...before].filter(([place, value]) => !alike(value, after.get(place)));
      expect(lost.map(([place, value]) => `${place}: ${value} became ${after.get(place)}`)).toEqual([]);
    },
  );
});

/** The numbers that cells with a formula show in the sample, and any cell in a copy. */
function numbersOf(parts: Map<string, string>): Map<string, number> {
  const numbers = writtenCells(parts).filter(
    ({ attributes, value }) => value !== undefined && !/\bt="(?!n")/.test(attributes),
  );
  return new Map(numbers.map(({ sheet, address, value }) => [`${sheet}!${address}`, Number(value)]));
}

function alike(value: number, other: number | undefined): boolean {
  return other !== undefined && Math.abs(value - other) <= 1e-9 * Math.max(1, Math.abs(value));
}
