import { describe, expect, it } from "vitest";
import { carriedStep, cellsStep, movedPlaces, stretchStep } from "../../../../src/hosts/tryout/saving/moved-places";

const rows = { first: 3, last: 4 };

describe("what moves the places of cells", () => {
  it("is kept by sheet, rows and columns apart from cells", () => {
    const places = movedPlaces();
    places.happened(stretchStep("s0", "rows", true, rows));
    places.happened(cellsStep({ sheet: "s1", cells: "A1" }, { sheet: "s2", cells: "B1" }));
    expect(places.moved()).toEqual(["s0"]);
    expect(places.carried()).toEqual(["s1", "s2"]);
  });

  it.each([
    ["rows put in", stretchStep("s0", "rows", true, rows), stretchStep("s0", "rows", false, rows)],
    ["columns taken out", stretchStep("s0", "columns", false, rows), stretchStep("s0", "columns", true, rows)],
    // Rows 3 and 4 go before row 8 and stand in 6 and 7 then; from there they go before row 3.
    ["rows carried down", carriedStep("s0", "rows", rows, 8), carriedStep("s0", "rows", { first: 6, last: 7 }, 3)],
    ["rows carried up", carriedStep("s0", "rows", { first: 6, last: 7 }, 3), carriedStep("s0", "rows", rows, 8)],
    [
      "cells carried",
      cellsStep({ sheet: "s0", cells: "A1" }, { sheet: "s1", cells: "B1" }),
      cellsStep({ sheet: "s1", cells: "B1" }, { sheet: "s0", cells: "A1" }),
    ],
  ])("is nothing once it is undone: %s", (_, step, undone) => {
    const places = movedPlaces();
    places.happened(step);
    expect([...places.moved(), ...places.carried()]).not.toEqual([]);
    places.happened(undone);
    expect([...places.moved(), ...places.carried()]).toEqual([]);
  });

  it("stays where other rows were taken out than those put in", () => {
    const places = movedPlaces();
    places.happened(stretchStep("s0", "rows", true, rows));
    places.happened(stretchStep("s0", "rows", false, { first: 9, last: 10 }));
    expect(places.moved()).toEqual(["s0"]);
  });
});
