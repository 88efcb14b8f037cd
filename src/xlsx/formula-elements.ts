import { elements, escaped, unescaped, type Patch } from "./xml";

/** What changes in a part when the formulas are put otherwise that stand in elements of these names. */
export function formulaPatches(xml: string, names: readonly string[], put: (formula: string) => string): Patch[] {
  return names
    .flatMap((name) => elements(xml, name))
    .flatMap(({ inside, insideStart }): Patch[] => {
      const before = unescaped(inside);
      const after = put(before);
      return after === before ? [] : [{ start: insideStart, end: insideStart + inside.length, text: escaped(after) }];
    });
}
