import { describe, expect, it } from "vitest";
import { callsOf } from "../../src/formula/calls";

const pieces = (formula: string) => callsOf("BOLE", formula).map(({ name, pieces }) => [name, ...pieces]);

describe("the calls of an add-in in a formula", () => {
  it.each([
    ["=BOLE.EMC(70,65)", [["EMC", "70", "65"]]],
    ['=IF(A1="BOLE.EMC(1)",bole.logscale(B2, , "a, b"),0)', [["LOGSCALE", "B2", "", '"a, b"']]],
    [
      "=BOLE.KERFLOSS(BOLE.QUARTERS(A1),1/8)",
      [
        ["KERFLOSS", "BOLE.QUARTERS(A1)", "1/8"],
        ["QUARTERS", "A1"],
      ],
    ],
    ["=SUM(A1:A9)", []],
    ["=BOLE.VERSION()", [["VERSION"]]],
    ["=BOLE.EMC(70", [["EMC", "70"]]],
  ])("%s", (formula, expected) => expect(pieces(formula)).toEqual(expected));
});
