import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { startEngine } from "../../../src/engine/engine";
import { SAMPLE } from "./parts";
import { rowsUnder } from "./rows";

/** Sheets with a row for each log. */
const SHEETS = ["Log book", "Log to sale", "Log results"];

/** What two of them call by one name and mean of different things. */
const OWN_MEANING = ["Date", "Note"];

it("every figure of a log that stands on two sheets is the same on both", async () => {
  const engine = await startEngine();
  const opened = await engine.open(readFileSync(SAMPLE));
  engine.stop();
  const [first, ...others] = SHEETS.map((sheet) => ({ sheet, rows: rowsUnder(opened, sheet, "Log") }));
  const pairs = [...others.map((other) => [first!, other] as const), [others[0]!, others[1]!] as const];
  const compared = new Set<string>();
  for (const [one, other] of pairs)
    for (const row of one.rows) {
      const same = other.rows.find(({ Log }) => Log === row["Log"]) ?? {};
      for (const heading of Object.keys(row).filter((name) => name in same && !OWN_MEANING.includes(name))) {
        compared.add(heading);
        const where = `${heading} of ${String(row["Log"])} on ${one.sheet} and ${other.sheet}`;
        expect(same[heading], where).toEqual(row[heading]);
      }
    }
  // Species, the day, what was scaled and sawn, what it cost: more than a handful.
  expect(compared.size).toBeGreaterThan(6);
});
