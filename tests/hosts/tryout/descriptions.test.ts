import { describe, expect, it } from "vitest";
import entries from "../../../src/catalog/catalog.json";
import { ADD_IN } from "../../../src/catalog/about/add-in";
import { isCellError } from "../../../src/cells/error";
import { callsOf } from "../../../src/formula/calls";
import { registry } from "../../../src/functions/registry";
import { suggestion } from "../../../src/hosts/tryout/page/descriptions";
import { typed } from "../../../src/hosts/pane/typed";

describe("the example that the grid prints of a function as one types", () => {
  it.each(entries.map((entry) => ({ name: entry.name, entry })))("$name is a call that answers", ({ name, entry }) => {
    const examples = suggestion(entry).functionParameter.map(({ example }) => example);
    expect(examples).not.toContain("");
    const [call] = callsOf(ADD_IN, `=BOLE.${name}(${examples.join(", ")})`);
    const cells = call!.pieces.map((piece) => {
      const part = typed(piece.trim());
      return part.kind === "value" ? part.cells : undefined;
    });
    // A table may hold a row that has no answer; its head has one.
    expect(isCellError(registry[name]!(...cells)[0]![0])).toBe(false);
  });
});
