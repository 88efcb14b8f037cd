import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { partsOf, SAMPLE_VALUES, writtenCells } from "./parts";

/** What a cell shows, whichever way its file keeps it. */
function shownIn(parts: Map<string, string>) {
  const texts = [...parts.get("xl/sharedStrings.xml")!.matchAll(/<si>(.*?)<\/si>/gs)].map(([, inner = ""]) =>
    [...inner.matchAll(/<t[^>]*>([^<]*)<\/t>/g)].map(([, text]) => text).join(""),
  );
  return new Map(
    writtenCells(parts).map(({ sheet, address, attributes, inner, value }) => {
      const inline = /<is><t[^>]*>([^<]*)<\/t><\/is>/.exec(inner)?.[1];
      const raw = /<v>([^<]*)<\/v>/.exec(inner)?.[1];
      const text = attributes.includes('t="s"') ? texts[Number(value)] : (inline ?? raw ?? "");
      return [`${sheet}!${address}`, text];
    }),
  );
}

describe("the sample's copy of values", () => {
  const [sample, copy] = [partsOf(), partsOf(readFileSync(SAMPLE_VALUES))];

  it("shows in every cell what the sample shows", () => {
    const [before, after] = [shownIn(sample), shownIn(copy)];
    const other = [...before].filter(([place, shown]) => (after.get(place) ?? "") !== shown);
    expect(other).toEqual([]);
  });

  it("asks Bole nothing", () => {
    expect(writtenCells(copy).filter(({ formula }) => /_xldudf_BOLE_/.test(formula ?? ""))).toEqual([]);
  });
});
