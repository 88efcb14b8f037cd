import { expect, it } from "vitest";
import { isWellFormed } from "../../src/formula/well-formed";

it.each([
  "=1",
  "=-A1+--B2%",
  "=SUM(A1:B2, 3,, )",
  '=IF(A1>=3,"a""b",TRUE)',
  "='My logs'!A1&Logs[Dia]",
  "={1,2;3,4}*2",
  "=BOLE.LOGSCALE(A1, 12)",
  "=PI()",
  "=#REF!+A:A",
  "=(1+2)*3<>4",
])("%s can be read", (formula) => expect(isWellFormed(formula)).toBe(true));

it.each([
  "=",
  "=1+",
  "=*5",
  "=SUM(1",
  "=SUM(1))",
  "=5 6",
  '="a" 5',
  "=(1,2)",
  "=()",
  "=1+*2",
  "={1,}",
  "=A1!",
  '="open',
  "=1>>2",
  "=[Dia]",
  "=$",
])("%s cannot", (formula) => expect(isWellFormed(formula)).toBe(false));
