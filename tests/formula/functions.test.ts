import { describe, expect, it } from "vitest";
import { functionsOf, inCapitals } from "../../src/formula/functions";

describe("the functions of an add-in", () => {
  it.each([
    ["_xldudf_BOLE_EMC(A1,B1)", true],
    ["BOLE.EMC(A1,B1)", true],
    ["MAP(A1:A3,_xldudf_bole_fraction)", true],
    ['"BOLE.EMC(1)"', false],
    ["'BOLE.EMC'!A1", false],
    ["NOBOLE.EMC(1)", false],
    ["_xldudf_OTHER_EMC(1)", false],
  ])("%s asks it: %s", (formula, asks) => expect(functionsOf("BOLE", formula).length > 0).toBe(asks));
  it("are written in capitals, and nothing else is", () => {
    expect(inCapitals("BOLE", '=bole.emc(A1,"bole.emc")+sum(1)')).toBe('=BOLE.EMC(A1,"bole.emc")+sum(1)');
  });
});
