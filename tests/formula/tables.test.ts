import { describe, expect, it } from "vitest";
import { expandTables, type Table } from "../../src/formula/tables";

describe("table references", () => {
  const logs: Table = {
    name: "Logs",
    sheet: "Log book",
    columns: ["Log", "Dia", "Net [bf]", "It's"],
    block: { top: 2, left: 0, bottom: 9, right: 3 },
    headings: true,
    totals: true,
  };
  it.each([
    ["=SUM(Logs[Dia])", "=SUM($B$4:$B$9)"],
    ["=SUM(logs[dia])", "=SUM($B$4:$B$9)"],
    ["=[@Dia]*2", "=$B6*2"],
    ["=Logs[[#This Row],[Dia]]", "=$B6"],
    ["=Logs[@]", "=$A6:$D6"],
    ["=Logs[@[Log]:[Dia]]", "=$A6:$B6"],
    ["=ROWS(Logs)", "=ROWS($A$4:$D$9)"],
    ["=ROWS(Logs[])", "=ROWS($A$4:$D$9)"],
    ["=Logs[#All]", "=$A$3:$D$10"],
    ["=Logs[[#Headers],[Dia]]", "=$B$3"],
    ["=Logs[[#Totals],[Dia]]", "=$B$10"],
    ["=Logs[[#Headers],[#Data],[Dia]]", "=$B$3:$B$9"],
    ["=SUM(Logs[[Log]:[Dia]])", "=SUM($A$4:$B$9)"],
    ["=SUM(Logs[Net '[bf']])", "=SUM($C$4:$C$9)"],
    ["=SUM(Logs[It''s])", "=SUM($D$4:$D$9)"],
    ["=Logs[Nothing]", "=#REF!"],
    ['="Logs[Dia]"', '="Logs[Dia]"'],
    ["=MyLogs+Logs_2", "=MyLogs+Logs_2"],
  ])("%s beside row 6 of the table", (typed, expanded) => {
    expect(expandTables(typed, [logs], { sheet: "Log book", row: 5, column: 1 })).toBe(expanded);
  });
  it("names the table's sheet from another sheet", () => {
    expect(expandTables("=SUM(Logs[Dia])", [logs], { sheet: "Money", row: 0, column: 0 })).toBe(
      "=SUM('Log book'!$B$4:$B$9)",
    );
  });
});
