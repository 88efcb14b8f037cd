import { describe, expect, it } from "vitest";
import { readCatalog } from "../../../src/catalog/read-catalog";
import { rowsOf } from "../../csv";
import { FIREWOOD } from "./asked";

/** Where each measuring rule is said on the reference pages. */
const SAID: Record<string, readonly [name: string, words: RegExp]> = {
  R1: ["BOARDFEET", /144 cubic inches/],
  R2: ["SURFACEMEASURE", /retail sales of hardwood lumber, not of flooring/],
  R3: ["SURFACEMEASURE", /width counts with its fractions/],
  R4: ["SURFACEMEASURE", /halves down \(Handbook 130.*our reading/],
  R5: ["TALLY", /first exact half foot of the list goes down, the next up/],
  R6: ["TALLY", /official hardwood tally/],
  R7: ["TALLY", /end tally disagrees, surface measure wins/],
  R8: ["TALLY", /do not multiply back/],
  R9: ["TALLY", /export bundle tally.*nearest inch, exact halves by turns/],
  R10: ["TALLY", /whole foot first, then the feet are added up, then the sum is multiplied.*whole board foot once/],
  R11: ["BOARDFEET", /under 1 in is tallied as 1 in/],
  R12: ["QUARTERS", /Rough green or air-dried lumber must hold its nominal thickness/],
  R13: ["QUARTERS", /1\/16 in scant up to 1 3\/4 in and 1\/8 in from 2 in/],
  R15: ["SURFACEMEASURE", /Standard lengths are 4 to 16 ft/],
  R16: ["DRIEDTALLY", /sold on its net board feet, with no addition for shrinkage/],
  R17: ["DRIEDTALLY", /5 to 9 % are met/],
  R18: ["SLABFEET", /a textbook has it for common boards/],
  R19: ["SLABFEET", /two old textbooks allow it/],
  R20: ["SLABFEET", /a third of the length from the narrower end: near fair \(from memory\)/],
  R21: ["DRESSEDSIZE", /must show the actual size/],
  R22: ["BOARDFEET", /nominal size by custom \(from memory\)/],
  R27: ["SURFACEMEASURE", /binds where a state adopts it/],
};

const GRADING = "a rule of grading, and Bole does not grade";

const NOT_SAID: Record<string, string> = {
  R14: GRADING,
  R23: GRADING,
  R24: "a test for inspectors",
  R25: FIREWOOD,
  R26: FIREWOOD,
  R28: "follows from the inch, exactly",
};

describe("the measuring rules of the trade", () => {
  const rules = rowsOf("trade/measuring_rules.csv");
  const pages = new Map(
    readCatalog().map(({ name, remarks, params }) => [name, [...remarks, ...params.map(({ text }) => text)].join(" ")]),
  );

  it("are each on a page, or listed with the reason why not", () => {
    expect([...Object.keys(SAID), ...Object.keys(NOT_SAID)].sort()).toEqual(rules.map(({ id }) => id).sort());
  });

  it.each(rules.filter(({ id }) => id! in SAID))("$id, $topic, is said where it is needed", ({ id }) => {
    const [name, words] = SAID[id!]!;
    expect(pages.get(name)).toMatch(words);
  });
});
