import { describe, expect, it } from "vitest";
import { asTyped, expandSpills } from "../../src/formula/typed";

describe("formulas as a person types them", () => {
  it.each([
    ["_xldudf_BOLE_EMC(A1,65)", "=BOLE.EMC(A1,65)"],
    ["_xlfn._xlws.SORT(_xlfn.UNIQUE(A1:A3))", "=SORT(UNIQUE(A1:A3))"],
    ["_xlfn.LET(_xlpm.a,1,_xlpm.a)", "=LET(a,1,a)"],
    ['_xldudf_BOLE_ECHO("_xlfn.A")', '=BOLE.ECHO("_xlfn.A")'],
    ["SUM(_xlfn.ANCHORARRAY('Cut plan'!A3))", "=SUM('Cut plan'!A3#)"],
    ["_xlfn.SINGLE(A1:A3)", "=(A1:A3)"],
  ])("%s", (stored, typed) => expect(asTyped(stored)).toBe(typed));

  const spillOf = (sheet: string | undefined, row: number, column: number) => `[${sheet ?? "here"}:${row},${column}]`;
  it.each([
    ["=SUM(D1#)", "=SUM([here:0,3])"],
    ["=SUM($D$1#,Plan!D1#)", "=SUM([here:0,3],Plan![Plan:0,3])"],
    ["=SUM('Cut plan'!D1#)", "=SUM('Cut plan'![Cut plan:0,3])"],
    ['="D1#"', '="D1#"'],
  ])("%s", (typed, expanded) => expect(expandSpills(typed, spillOf)).toBe(expanded));
});
