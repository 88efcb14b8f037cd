import { describe, expect, it } from "vitest";
import { BEAMFIT, CUTPLAN, CUTYIELD } from "../../../src/functions";

const plan = (diameter: number, size: unknown, more: [string, unknown][] = [], length: unknown = 8) =>
  CUTPLAN([[diameter]], [[length]], [["4/4"]], [[0.125]], [["timber"]], [["timber", size], ...more] as unknown[][]);
const timberIn = (table: unknown[][]) =>
  table.find((row) => String(row.at(-1)).includes("timber") && row[0] !== "no board");
const noteOf = (table: unknown[][], name: string) => table.find(([first]) => first === name)?.at(-1);

describe("a timber in the cut plan", () => {
  it("comes out of the log that BEAMFIT has room in, and of none smaller", () => {
    // A 6 x 8 takes a circle of 10 in, its own diagonal; to lie on the scale it may take a step more.
    const NONE: [string, unknown][] = [
      ["taper", "0"],
      ["minimum length", 8],
    ];
    for (const [diameter, fits] of [
      [10.5, true],
      [10.05, true],
      [9.97, false],
    ] as const) {
      expect((BEAMFIT([[diameter]], [[6]], [[8]])[0]![0] as number) >= 0).toBe(fits);
      expect(timberIn(plan(diameter, "6x8", NONE)) !== undefined).toBe(fits);
    }
    expect(noteOf(plan(9.97, "6x8", NONE), "no board")).toMatch(/^no timber of these sides/);
  });

  it("is counted by its own sides and length, and stands beside the boards of the same log", () => {
    const table = plan(18, "6x8", [["trim", 4]], "12-4");
    const timber = timberIn(table)!;
    expect([timber[2], timber[3]].sort()).toEqual([6, 8]);
    expect(timber.slice(4, 6)).toEqual([12, (6 * 8 * 12) / 12]);
    const feet = table
      .slice(1)
      .filter(([pass]) => typeof pass === "number")
      .map((row) => Number(row[5]));
    expect(table.find(([first]) => first === "total")![5]).toBeCloseTo(
      feet.reduce((sum, one) => sum + one, 0),
      9,
    );
    expect(
      CUTYIELD(
        [[18]],
        [["12-4"]],
        [["4/4"]],
        [[0.125]],
        [["timber"]],
        [
          ["timber", "8 x 6"],
          ["trim", 4],
        ],
      )[0]![0],
    ).toBe(table.find(([first]) => first === "total")![5]);
  });

  it("is shorter where only the thicker end of the log has its section", () => {
    const [, , , , length] = timberIn(plan(9.5, "6x8", [["taper", 1]], 12))!;
    // At 1 in of taper in 4 ft the log is 10 in through 2 ft from the small end.
    expect(length).toBe(10);
  });

  it("lies at heights of the head's scale, whichever pass", () => {
    for (const row of plan(17.3, "5 1/2 x 7", [["scale step", 0.0625]]).slice(1))
      if (typeof row[0] === "number") expect((Number(row[1]) * 16) % 1).toBe(0);
  });

  it("is asked for by its sides, and says when they were rounded or are not used", () => {
    const message = (table: unknown[][]) => (table[0]![0] as { message: string }).message;
    expect(message(CUTPLAN([[18]], [[8]], [["4/4"]], [[0.125]], [["timber"]]))).toBe(
      "timber: needs its two sides in inches, such as 6x8, among the settings",
    );
    expect(message(plan(18, "6"))).toBe('settings, timber: wanted two sides in inches, such as 6x8, got "6"');
    expect(message(plan(18, "6x8", [["guide opening", 12]]))).toMatch(/neither a cant nor a timber can be sawn/);
    const warnings = plan(18, "6.01x8").filter(([first]) => first === "warning");
    expect(warnings.map((row) => row.at(-1)).join()).toMatch(/side of the timber 6\.01 in is no whole number/);
    const live = CUTPLAN([[18]], [[8]], [["4/4"]], [[0.125]], [["live"]], [["timber", "6x8"]]);
    expect(live.map((row) => row.at(-1)).join()).toContain("not used for this plan, pattern live: timber");
  });
});
