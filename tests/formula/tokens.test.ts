import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { sheetNameIn, tokensOf } from "../../src/formula/tokens";

const kinds = (formula: string) => tokensOf(formula).map(({ kind, text }) => `${kind} ${text}`);

describe("a formula in words", () => {
  it.each([
    ["=A1+$B$2:C9", ["sign =", "cells A1", "sign +", "cells $B$2:C9"]],
    ["B:C,$4:9", ["cells B:C", "sign ,", "cells $4:9"]],
    [
      "A1:INDEX(B:B,3)",
      ["cells A1", "sign :", "function INDEX", "sign (", "cells B:B", "sign ,", "number 3", "sign )"],
    ],
    ["LOG10(5)+Q1_total", ["function LOG10", "sign (", "number 5", "sign )", "sign +", "name Q1_total"]],
    ["'it''s'!B2&\"a\"\"b\"", ["sheet 'it''s'!", "cells B2", "sign &", 'text "a""b"']],
    [
      "[1]Prices!A1+'[2]My sheet'!A1+[1]!Rate",
      [
        "sheet [1]Prices!",
        "cells A1",
        "sign +",
        "sheet '[2]My sheet'!",
        "cells A1",
        "sign +",
        "sheet [1]!",
        "name Rate",
      ],
    ],
    ["Jan:Dec!A1", ["sheet Jan:Dec!", "cells A1"]],
    [
      "Logs[[#This Row],[Net '[bf']]]*[@Dia]",
      ["name Logs", "bracket [[#This Row],[Net '[bf']]]", "sign *", "bracket [@Dia]"],
    ],
    ["D1#+#REF!+#N/A", ["cells D1", "sign #", "sign +", "error #REF!", "sign +", "error #N/A"]],
    ["1.50e-3 TRUE", ["number 1.50e-3", "space  ", "name TRUE"]],
    [
      "XFE1+A1048577+A0+XFD1048576",
      ["name XFE1", "sign +", "name A1048577", "sign +", "name A0", "sign +", "cells XFD1048576"],
    ],
    ["Größe*\\x", ["name Größe", "sign *", "name \\x"]],
  ])("%s", (formula, expected) => expect(kinds(formula)).toEqual(expected));

  it.each(['="a', "='a", "=Logs[a", "=[[a]"])("%s is opened and not closed", (formula) =>
    expect(tokensOf(formula).at(-1)?.unclosed).toBe(true),
  );

  it("says a sheet's name without its quotes", () => {
    expect(["'it''s'!", "Prices!"].map(sheetNameIn)).toEqual(["it's", "Prices"]);
  });

  it("is whole again when its words are put together", () => {
    const scraps = fc.constantFrom(..."'\"[]{}(),;:!#$@ \\.AB19e_ü", "A1", "SUM(", "'a'!", "#REF!", "[1]", "Logs[");
    fc.assert(
      fc.property(fc.array(scraps, { maxLength: 60 }), (pieces) => {
        const formula = pieces.join("");
        expect(
          tokensOf(formula)
            .map(({ text }) => text)
            .join(""),
        ).toBe(formula);
      }),
      { seed: 21, numRuns: 2000 },
    );
  });
});

describe("a formula made to hurt", () => {
  /** How many times longer a text twice as long takes; one of its square would take four times as long. */
  const LENGTH = 200_000;
  it.each(["'", '"', "[", "[a", "'a", "A:", "A", "1", "a!", "#", "(", "{", "$", ".", "A1:", "x[", " "])(
    "of many %j is read in a moment, sign by sign",
    (piece) => {
      const formula = piece.repeat(LENGTH / piece.length);
      const tokens = tokensOf(formula);
      expect(tokens.reduce((sum, { text }) => sum + text.length, 0)).toBe(formula.length);
    },
  );
});
