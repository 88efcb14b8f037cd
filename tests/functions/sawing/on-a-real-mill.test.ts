import { describe, expect, it } from "vitest";
import { CUTPLAN, CUTWIDTH, CUTYIELD, HEADHEIGHTS, KERFGAIN } from "../../../src/functions/sawing";
import { BOARDFEET } from "../../../src/functions/boards";
import { one, refused, rowNamed, under, type Cell } from "../sheet";
import { log, plan, PLAIN, yieldOf, type Settings } from "./planned";

const answerOf = (settings: Settings, pattern?: string, products?: Cell[][]) =>
  CUTYIELD(...log(settings, pattern, products))[0]![0];

describe("a blade over the bed", () => {
  it("never goes under the bed clearance, which a scale step is taken up to and not down", () => {
    for (const step of [1 / 4, 1 / 8, 1 / 16, 1 / 32])
      for (const clearance of [0.9, 1.01, 1.1, 1.51, 2.2]) {
        const { passes } = plan({ "bed clearance": clearance, "scale step": step });
        expect(passes.length).toBeGreaterThan(8);
        for (const { height } of passes) expect(height).toBeGreaterThanOrEqual(clearance);
      }
    expect(yieldOf({ "bed clearance": 1, "scale step": 0.25 })).toBe(
      yieldOf({ "bed clearance": 0.8, "scale step": 0.25 }),
    );
  });

  it("is warned of when it goes lower than dogs stand and nobody has said how low it may go", () => {
    expect(plan().notes).toMatch(/the blade goes down to \S+ in over the bed: set bed clearance/);
    expect(plan({ "bed clearance": 0.25 }).notes).not.toMatch(/over the bed: set/);
    expect(plan({ "first cut": 20.5, widths: "17" }).notes).not.toMatch(/over the bed: set/);
    expect(plan({}, "live", one(24)).notes).not.toMatch(/over the bed: set/);
  });
});

describe("a kerf that the scale would round to none", () => {
  it("is refused alike by plan and yield, with the step that is too coarse for it", () => {
    const message =
      /^kerf \(in\): wanted 1\/8 or more, half the scale step of 1\/4, got 0\.12; set a finer scale step$/;
    for (const ask of [CUTPLAN, CUTYIELD])
      expect(ask(one(16), one(8), one("4/4"), one(0.12), one("live"), [["scale step", "1/4"]])).toEqual([
        [refused("#N/A", message)],
      ]);
    expect(yieldOf({ "scale step": "1/4" })).toBeGreaterThan(0);
    expect(KERFGAIN(one(20), one(12), one("4/4"), one(0.001), one(0.25))).toEqual([
      [refused("#N/A", /^kerf \(in\): wanted 0\.00195313 or more, got 0\.001$/)],
    ]);
  });

  it("is refused for the rip saw too, where boards are ripped", () => {
    expect(answerOf({ "rip kerf": 0.01, rip: "yes" })).toEqual(
      refused("#N/A", /^rip kerf \(in\): wanted 1\/64 or more/),
    );
    expect(answerOf({ "rip kerf": 0.01 })).toBe(PLAIN);
  });
});

describe("a kerf between two steps of the scale", () => {
  const notes = (kerf: Cell, step: Cell) =>
    under(
      CUTPLAN(one(16), one(8), one("4/4"), one(kerf), one("live"), [["scale step", step]]) as Cell[][],
      "note",
    ).join("\n");

  it("is warned of with what it does to the boards and what helps", () => {
    expect(notes(0.0825, 1 / 16)).toMatch(
      /^kerf 0\.08\d in is .* 1\/16 in was taken, so every board comes out 0\.02 in thinner than it says; a finer scale/m,
    );
    expect(notes(0.0525, 1 / 16)).toMatch(/1\/16 in was taken, so every board comes out 0\.01 in thicker/);
  });

  it("is not met by 3 mm on a scale of millimetres", () => {
    expect(notes("3 mm", "1 mm")).not.toMatch(/^kerf/m);
    expect(notes("3 mm", "2 mm")).toMatch(/^kerf/m);
  });
});

describe("thicknesses typed side by side in place of one under the other", () => {
  it("are refused, because the second column is the green size", () => {
    expect(answerOf({}, "live", [["4/4", "8/4"]])).toEqual(
      refused("#N/A", /green size \(in\) beside the thickness 4\/4 .*row below.*: wanted 0\.7 to 1\.45, got 2/),
    );
    expect(answerOf({}, "live", [["8/4", "4/4"]])).toEqual(
      refused("#N/A", /thickness 8\/4.*: wanted 1\.4 to 2\.65, got 1/),
    );
    expect(yieldOf({}, "live", [["4/4"], ["8/4"]])).toBeGreaterThan(0);
  });

  it("leave the green sizes of the trade alone: 2 x 4 sawn at 1 5/8, full 4/4, thick slabs", () => {
    for (const [thickness, green] of [
      [2, 1.625],
      [1, 0.8125],
      [1, 1],
      [1, 1.375],
      [2, 2.5],
      [3, 3.5],
      [0.25, 0.5],
    ])
      expect(yieldOf({}, "live", [[thickness, green]])).toBeGreaterThan(0);
  });
});

describe("a quarter-sawn log", () => {
  const quartered = (settings: Settings) => plan(settings, "quarter");

  it("has its heart sawn off with two cuts each time, over and under it, each half standing lower on its edge", () => {
    const cuts = quartered({ heart: 3 }).passes.slice(0, 4);
    // The butt is 21 1/2 in: pith at 10 3/4, and at root(10 3/4^2 - 1 1/2^2) = 10.6448 where a half stands on its edge.
    const heights = [10.75 + 1.5 - 0.125, 10.75 - 1.5, 10.6448 + 1.5 - 0.125, 10.6448 - 1.5];
    cuts.forEach(({ height, width }, at) => {
      expect(height).toBeCloseTo(heights[at]!, 4);
      expect(width).toBe("");
    });
    expect(cuts[0]!.note).toBe("halve the log: over the 3 in heart");
    expect(cuts[2]!.note).toBe("stand the halves on edge and quarter them: over the 3 in heart");
    expect(quartered({ heart: 3 }).passes[4]!.width).toBeGreaterThan(0);
  });

  it("without a heart is cut once through the pith and once through both halves", () => {
    for (const settings of [{}, { heart: 0.1 }]) {
      const [first, second, third] = quartered(settings).passes;
      expect([first!.height, second!.height]).toEqual([10.75 - 0.0625, 10.75 - 0.0625]);
      expect(third!.width).toBeGreaterThan(0);
    }
  });

  it("wider than the guides is halved with another saw first; one whose quarters are wider is refused", () => {
    expect(quartered({ "guide opening": 21.5 }).notes).not.toMatch(/guides open/);
    expect(quartered({ "guide opening": 21.4 }).notes).toMatch(
      /butt is 21-1\/2 in.*halve the log .* with another saw first/,
    );
    expect(answerOf({ "guide opening": 10.75 }, "quarter")).toBe(yieldOf({}, "quarter"));
    expect(answerOf({ "guide opening": 10.7 }, "quarter")).toEqual(
      refused("#N/A", /guides that open 10\.7 in: its quarters would be too wide too/),
    );
  });
});

describe("the positions of a log that is turned", () => {
  it("say when the shim is under the small end", () => {
    expect(plan().notes).toMatch(/pith is level$/m);
    expect(plan({ "cant widths": 8 }, "cant").notes).toMatch(
      /none while the log lies on its flat, and again under the turned cant/,
    );
    expect(plan({}, "quarter").notes).toMatch(/none under the quarters/);
  });

  it("are none when no cant fits, which is said", () => {
    expect(plan({ "cant widths": "24, 30" }, "cant").notes).toMatch(/no cant as wide as these.*see cant widths/);
    expect(plan({ "cant widths": "8, 30" }, "cant").notes).not.toMatch(/no cant/);
  });
});

describe("functions that should agree with the plan", () => {
  it("HEADHEIGHTS counts the same heights down, and CUTYIELD and BOARDFEET the same board feet", () => {
    const table = CUTPLAN(...log({ "bed clearance": 1 })) as Cell[][];
    const passes = table.slice(1, table.indexOf(rowNamed(table, "total")!));
    const heights = HEADHEIGHTS(one(passes[0]![1]), one(1.125), one(0.125), one(passes.length - 1), one(1)) as Cell[][];
    expect(under(heights, "blade height")).toEqual(under([table[0]!, ...passes], "blade height"));
    const boards = passes.slice(1);
    const feet = BOARDFEET(
      boards.map((row) => [row[2]]),
      boards.map((row) => [row[3]]),
      boards.map((row) => [row[4]]),
    ) as number[][];
    boards.forEach((row, at) => expect(feet[at]![0]).toBeCloseTo(row[5] as number, 9));
    const total = rowNamed(table, "total")![5] as number;
    expect(feet.reduce((sum, [one]) => sum + one!, 0)).toBeCloseTo(total, 9);
    expect(answerOf({ "bed clearance": 1 })).toBe(total);
  });

  it("CUTWIDTH finds every full-length board of a log without taper no wider than its narrower face", () => {
    for (const { height, width } of plan({ taper: "none" }).boards) {
      const faces = [height + 0.125, height + 0.125 + 1.125].map((face) => CUTWIDTH(one(20), one(20 - face))[0]![0]);
      expect(width).toBeLessThanOrEqual(Math.min(...(faces as number[])));
    }
  });
});
