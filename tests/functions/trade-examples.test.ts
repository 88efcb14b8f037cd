import { describe, expect, it } from "vitest";
import { readCatalog } from "../../src/catalog/read-catalog";
import { rowsOf } from "../csv";
import { answerTo } from "./literal-call";

/** A double is this near to the decimal it stands for, where an example is exact. */
const EXACT = 1e-9;

/** Five logs 16 in by 16 ft and one by 8 ft. */
const SIX_LOGS = '=BOLE.LOGSCALE({16;16;16;16;16;16}, {16;16;16;16;16;8}, "Doyle")';

/**
 * How each worked example is asked, by its id; a number after it brings the answer to the unit of the example.
 * The answers of several logs are added up.
 */
const ASKED: Record<string, string | readonly [formula: string, times: number]> = {
  T001: "=BOLE.SURFACEMEASURE(6.25, 8)",
  T002: "=BOLE.TALLY(6.25, 8, 2)",
  T004: "=BOLE.SURFACEMEASURE(12, 8.5)",
  T005: "=BOLE.SURFACEMEASURE(6.5, 8)",
  T006: "=BOLE.SURFACEMEASURE(8, 12)",
  T008: "=BOLE.SURFACEMEASURE(8.75, 12)",
  T009: "=BOLE.SURFACEMEASURE(9.25, 12)",
  T010: '=BOLE.TALLY({8.5;8.5}, {12;12}, 1, "alternate")',
  T012: "=BOLE.BOARDFEET(2, 6, 1)",
  T013: "=BOLE.BOARDFEET(2, 8, 1)",
  T014: "=BOLE.BOARDFEET(2, 12, 1)",
  T016: '=BOLE.BOARDFEET(2, 8, "216 in")',
  T017: "=BOLE.LINEAMOUNT(500, 0.018)",
  T018: "=BOLE.LINEAMOUNT(100, 0.018)",
  T020: "=BOLE.BOARDFEET(1, 12, 16)",
  T021: "=BOLE.BOARDFEET(1, 6, 18)",
  T022: "=BOLE.BOARDFEET(2, 6, 12)",
  T024: '=BOLE.BOARDFEET(1.5, 9, "96 in")',
  T025: '=BOLE.BOARDFEET("3/4", 9, "96 in")',
  T026: "=BOLE.BOARDFEET(1, 6, 10)",
  T028: "=BOLE.BOARDFEET(1, 4, 3)",
  T029: "=BOLE.BOARDFEET(1, 8, 8)",
  T030: "=BOLE.PACKFEET(48, 10, 1, 1)",
  T032: "=BOLE.OVERRUN(502, 480)",
  T033: "=BOLE.DRIEDTALLY(1000, 7)",
  T034: ["=BOLE.BOARDCOST(1800, 0, 0, 0, 0, 1000, 7)", 1000],
  T037: SIX_LOGS,
  T038: "=BOLE.LINEAMOUNT(790, 0.5)",
  T040: "=BOLE.LINEAMOUNT(352, 0.875)",
  T041: "=BOLE.LINEAMOUNT(242, 0.55)",
  T044: "=BOLE.LOGBID(1000, 0.373, 100)",
  T046: "=BOLE.OVERRUN(1000, 790)",
  T050: "=BOLE.OVERRUN(201163, 152240)",
  T062: "=BOLE.LINEAMOUNT(5000000000, 0.25)",
  T065: "=BOLE.LINEAMOUNT(15.6, 0.0816)",
  T066: "=BOLE.LINEAMOUNT(3.192, 0.0816)",
  T069: "=BOLE.LINEAMOUNT(21, 4.86)",
  T070: "=BOLE.BOARDCOST(0, 0, 0, 0, 102, 540)",
  T072: "=BOLE.BOARDCOST(0, 0, 0, 0, 62, 540)",
  T078: '=BOLE.QUARTERS("5/4", "kiln-dried")',
  T082: '=BOLE.MEASURE("5\'-6 3/4""", "ft")',
  T084: '=BOLE.MEASURE("2\'-4 1/2""")',
};

const OWN_SUM = "a plain sum or quotient of printed figures, which the sheet does itself";
const LOGS = "the rounding of printed Scribner tables, which is checked beside the log rules";
const OBSERVED = "an observation with nothing to compute it from";
const FIREWOOD = "stacked firewood, which is counted by the cord and not by the board";

/** Why the other worked examples are not asked of boards and money. */
const NOT_ASKED: Record<string, string> = {
  T036: OWN_SUM,
  T042: OWN_SUM,
  T045: OWN_SUM,
  T048: LOGS,
  T049: LOGS,
  T052: "a rule of thumb that Bole does not offer",
  T053: "a rule of thumb that Bole does not offer",
  T054: OWN_SUM,
  T056: OWN_SUM,
  T057: OWN_SUM,
  T058: OBSERVED,
  T060: "the kerf is not stated",
  T061: OWN_SUM,
  T064: OWN_SUM,
  T068: "the printed total has a heater whose power is not printed",
  T073: OBSERVED,
  T074: OBSERVED,
  T076: OBSERVED,
  T077: OBSERVED,
  T080: FIREWOOD,
  T081: FIREWOOD,
};

describe("the worked examples of the trade", () => {
  const examples = rowsOf("trade/worked_examples.csv");

  it("are each asked, or listed with the reason why not", () => {
    const listed = [...Object.keys(ASKED), ...Object.keys(NOT_ASKED)].sort();
    expect(listed).toEqual(examples.map(({ id }) => id).sort());
  });

  it.each(examples.filter(({ id }) => id! in ASKED))("$id: $topic, $inputs is $expected $unit ($source)", (row) => {
    const asked = ASKED[row.id!]!;
    const [formula, times] = typeof asked === "string" ? [asked, 1] : asked;
    const wanted = Number(row.expected);
    expect(Math.abs(totalOf(formula) * times - wanted)).toBeLessThanOrEqual(
      Number(row.tol_abs) + EXACT * Math.max(1, wanted),
    );
  });
});

/** How each negative example is asked: the right answer to half its last digit, and the wrong one that was printed. */
const WRONG: Record<string, { formula: string; right: number; digits: number; wrong: number }> = {
  N1: { formula: "=BOLE.BOARDCOST(1.38, 0, 0, 0, 0, 1, 11.5)", right: 1.5593, digits: 4, wrong: 1.54 },
  N2: { formula: '=BOLE.MEASURE("4\'-7 1/4""")', right: 55.25, digits: 9, wrong: 40.75 },
  N3: { formula: '=BOLE.MEASURE("8\' -5/8""")', right: 96.625, digits: 9, wrong: 100.625 },
  N4: { formula: '=BOLE.MEASURE("1/50")', right: 0.02, digits: 9, wrong: 18264 },
  N5: { formula: '=BOLE.MEASURE("2/3")', right: 0.6667, digits: 4, wrong: 46056 },
  N7: { formula: SIX_LOGS, right: 792, digits: 9, wrong: 790 },
  N8: { formula: '=BOLE.BOARDFEET(2, 8, "216 in")', right: 24, digits: 9, wrong: 0.24 },
  /** 5 1/2 in by 8 ft 6 in of 5/4: the thread's way is 6 in by 9 ft of 6/4. */
  N9: { formula: '=BOLE.TALLY(5.5, 8.5, "5/4")', right: 5, digits: 9, wrong: 6.75 },
  /** Three boards 8.4 in by 10 ft: widths brought to 8 in first would make 20 ft. */
  N11: { formula: "=BOLE.TALLY({8.4;8.4;8.4}, 10, 1)", right: 21, digits: 9, wrong: 20 },
};

const WRONG_NOT_ASKED: Record<string, string> = {
  N6: OWN_SUM,
  N10: "a price misprinted by a factor, with nothing to compute it from",
};

describe("the negative examples of the trade", () => {
  const examples = rowsOf("trade/negative_examples.csv");

  it("are each asked, or listed with the reason why not", () => {
    const listed = [...Object.keys(WRONG), ...Object.keys(WRONG_NOT_ASKED)].sort();
    expect(listed).toEqual(examples.map(({ id }) => id).sort());
  });

  it.each(examples.filter(({ id }) => id! in WRONG))("$id: $case is $right_result, not $wrong_result_seen", (row) => {
    const { formula, right, digits, wrong } = WRONG[row.id!]!;
    const answer = totalOf(formula);
    expect(answer).toBeCloseTo(right, digits);
    expect(Math.abs(answer - wrong)).toBeGreaterThan(0.01);
  });

  it("N5: what a sheet makes of 2/3 typed into a plain cell is refused as a date", () => {
    expect(answerTo("=BOLE.MEASURE(46056)")[0]![0]).toMatchObject({ error: "#VALUE!" });
  });
});

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
  R17: ["DRIEDTALLY", /7 % when left out, 5 to 9 % are met/],
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

function totalOf(formula: string): number {
  return answerTo(formula)
    .flat()
    .reduce<number>((sum, answer) => sum + Number(answer), 0);
}
