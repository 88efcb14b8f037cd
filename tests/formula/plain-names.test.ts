import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { withPlainNames, withStoredNames } from "../../src/formula/plain-names";

const isKnown = (name: string) => ["EMC", "LOGSCALE"].includes(name);
const plain = (formula: string) => withPlainNames("BOLE", formula, isKnown);
const stored = (formula: string) => withStoredNames("BOLE", formula, isKnown);

describe("functions of an add-in without a dot in their names", () => {
  it.each([
    ["_xldudf_BOLE_EMC(A1,B1)*2", "BOLE_EMC(A1,B1)*2", 1],
    ["BOLE.EMC(A1)", "BOLE_EMC(A1)", 1],
    ["_xldudf_bole_emc(_xldudf_BOLE_LOGSCALE(A1))", "BOLE_EMC(BOLE_LOGSCALE(A1))", 2],
    ["MAP(A1:A3,_xldudf_BOLE_EMC)", "MAP(A1:A3,BOLE_EMC)", 1],
    ['IF(A1="BOLE.EMC(1)",1,_xldudf_BOLE_EMC(1))', 'IF(A1="BOLE.EMC(1)",1,BOLE_EMC(1))', 1],
    ["'BOLE.EMC'!A1+_xldudf_OTHER_EMC(1)", "'BOLE.EMC'!A1+_xldudf_OTHER_EMC(1)", 0],
  ])("%s is %s", (before, after, calls) => expect(plain(before)).toEqual({ formula: after, calls, unknown: [] }));

  it("are found again on the way back, in capitals, and nothing else is", () => {
    const back = "MAP(A1:A3,bole_emc)+BOLE_LOGSCALE(\"BOLE_EMC(1)\")+'BOLE_EMC'!A1+BOLE_RATE+NOBOLE_EMC(1)";
    expect(stored(back)).toEqual({
      formula:
        "MAP(A1:A3,_xldudf_BOLE_EMC)+_xldudf_BOLE_LOGSCALE(\"BOLE_EMC(1)\")+'BOLE_EMC'!A1+BOLE_RATE+NOBOLE_EMC(1)",
      calls: 2,
      unknown: [],
    });
  });

  it("that the add-in does not have stay, and are named", () => {
    expect(plain("BOLE.NONE(1)+_xldudf_BOLE_EMC(1)")).toEqual({
      formula: "BOLE.NONE(1)+BOLE_EMC(1)",
      calls: 1,
      unknown: ["NONE"],
    });
    expect(stored("BOLE_NONE(1)")).toEqual({ formula: "BOLE_NONE(1)", calls: 0, unknown: ["NONE"] });
  });

  it("come back as they were, whatever stands round them", () => {
    const piece = fc.constantFrom(
      '"a ""b"" BOLE_EMC("',
      "_xldudf_BOLE_EMC(A1)",
      "SUM(A1:B2)",
      "'It''s'!A1",
      "[x]",
      "#N/A",
    );
    fc.assert(
      fc.property(fc.array(piece, { minLength: 1 }), (pieces) => {
        const formula = pieces.join("+");
        expect(stored(plain(formula).formula).formula).toBe(formula);
      }),
    );
  });
});

describe("a formula that was saved in a text", () => {
  const saved = (text: string) => `IFERROR(__xludf.DUMMYFUNCTION("${text}"),12.5)`;

  it("is taken out of it where it asks the add-in", () => {
    expect(stored(saved('BOLE_LOGSCALE(A1,B1,""Doyle"")*2'))).toEqual({
      formula: '_xldudf_BOLE_LOGSCALE(A1,B1,"Doyle")*2',
      calls: 1,
      unknown: [],
    });
    expect(stored(saved("=BOLE_EMC(A1)")).formula).toBe("_xldudf_BOLE_EMC(A1)");
  });

  it.each([saved("IMPORTRANGE(A1,B1)"), saved('""COMPUTED_VALUE""'), `1+${saved("BOLE_EMC(1)")}`])(
    "is left alone: %s",
    (formula) => expect(stored(formula)).toMatchObject({ formula, calls: 0 }),
  );

  it.each([saved("ARRAYFORMULA(BOLE_EMC(A1:A9))"), saved("BOLE_EMC(A2:A)")])(
    "is left and told where Excel could not read it: %s",
    (formula) => expect(stored(formula)).toEqual({ formula, calls: 0, unknown: [], stuck: true }),
  );
});
