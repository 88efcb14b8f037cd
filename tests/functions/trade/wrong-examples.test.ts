import { describe, expect, it } from "vitest";
import { rowsOf } from "../../csv";
import { answerTo } from "../literal-call";
import { OWN_SUM, SIX_LOGS, totalOf } from "./asked";

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
