import { readFileSync } from "node:fs";
import { beforeAll, describe, expect, it } from "vitest";
import { yardRows } from "../../../src/sheets/sample/yard/read";
import { MEASURE, TIEDOWNS } from "../../../src/functions";
import { startEngine, type OpenedWorkbook } from "../../../src/engine/engine";
import { SAMPLE } from "./parts";
import { type Row, rowsUnder } from "./rows";

let opened: OpenedWorkbook;
let logs: Row[], loads: Row[], lines: Row[];

beforeAll(async () => {
  const engine = await startEngine();
  opened = await engine.open(readFileSync(SAMPLE));
  engine.stop();
  logs = rowsUnder(opened, "Log book", "Log");
  loads = rowsUnder(opened, "Loads", "Load");
  lines = rowsUnder(opened, "Invoice lines", "Invoice");
});

const day = (value: unknown) => (value as Date).getTime();
const feetOf = (length: unknown) => MEASURE([[length]], [["ft"]])[0]![0] as number;
const figureOf = (sheet: string, label: string) => {
  const rows = Array.from({ length: 80 }, (_, i) => i + 1);
  return opened.value(sheet, `B${rows.find((row) => opened.value(sheet, `A${row}`) === label)}`);
};

describe("the days of the invented season", () => {
  it("have all the logs of one load come in together", () => {
    for (const { Load } of loads) {
      const aboard = logs.filter((log) => log["Load"] === Load);
      expect(aboard.length, String(Load)).toBeGreaterThan(0);
      expect(new Set(aboard.map((log) => log["Date"])).size, String(Load)).toBe(1);
    }
  });

  it("saw every log after it came in, and stack it after it was sawn", () => {
    const stacks = new Map(yardRows("stacks").map(({ Stack, Stacked }) => [Stack, day(Stacked)]));
    const cameIn = new Map(yardRows("logs").map(({ Log, Date }) => [Log, day(Date)]));
    for (const { Log: log, Sawn: sawn, Stack: stack } of yardRows("sawing")) {
      expect(day(sawn), String(log)).toBeGreaterThan(cameIn.get(log!)!);
      expect(day(sawn), String(log)).toBeLessThanOrEqual(stacks.get(stack!)!);
    }
  });

  it("number the invoices as they were written", () => {
    const days = yardRows("invoices").map(({ Date }) => day(Date));
    expect(days).toEqual([...days].sort((a, b) => a - b));
  });

  it("sell nothing kiln-dried before the last reading of the kiln's stack in the yard", () => {
    const stack = yardRows("stacks").find((one) => one["Stack"] === opened.value("Drying", "J30"))!;
    const last = yardRows("readings").at(-1)!;
    const dry = lines.filter(({ Description }) => String(Description).includes("kiln-dried"));
    expect(dry.length).toBeGreaterThan(0);
    const dates = new Map(yardRows("invoices").map(({ Invoice, Date }) => [Invoice, day(Date)]));
    for (const { Invoice } of dry)
      expect(dates.get(Invoice as number)).toBeGreaterThan(day(stack["Stacked"]) + Number(last["Day"]) * 86_400_000);
  });
});

describe("the loads of the invented season", () => {
  it("are tied down for the longest log aboard, by what it all could weigh", () => {
    const vehicles = rowsUnder(opened, "Vehicles", "Vehicle");
    for (const { Load, ...load } of loads) {
      const aboard = logs.filter((log) => log["Load"] === Load);
      const longest = Math.max(...aboard.map(({ Length }) => feetOf(Length)));
      expect(feetOf(load["Longest log"]), String(Load)).toBe(longest);
      const heavy = aboard.reduce((total, log) => total + Number(log["Could be lb"]), 0);
      const strap = vehicles.find(({ Vehicle }) => Vehicle === load["Vehicle"])!["Strap limit lb"];
      expect([[load["Tie-downs"]]], String(Load)).toEqual(TIEDOWNS([[heavy]], [[longest]], [[strap]]));
    }
  });

  it("plan a load by the straps of its vehicle and the longest of its logs", () => {
    const planned = rowsUnder(opened, "Lift and hitch", "Log").map(({ Log }) =>
      logs.find((log) => log["Log"] === Log)!,
    );
    expect(planned.length).toBeGreaterThan(1);
    const heavy = planned.reduce((total, log) => total + Number(log["Could be lb"]), 0);
    const longest = Math.max(...planned.map(({ Length }) => feetOf(Length)));
    const strap = figureOf("Lift and hitch", "Limit of one strap or chain");
    expect([[figureOf("Lift and hitch", "Tie-downs for the longest log")]]).toEqual(
      TIEDOWNS([[heavy]], [[longest]], [[strap]]),
    );
  });

  it("show in the summary the least that is left when every log is as heavy as it could be", () => {
    const worst = Math.min(...loads.map((load) => Number(load["Left at worst"])));
    expect(figureOf("Summary", "Least payload left at worst")).toBe(worst);
  });
});
