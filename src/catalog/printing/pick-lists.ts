import type { Entry, Param } from "../entry";

/** A list of words that Excel offers in the formula bar for an argument (CustomFunctionsRuntime 1.5). */
export interface PickList {
  id: string;
  type: "string";
  values: { name: string; stringValue: string; tooltip: string }[];
}

/** Kinds of argument that are a set of words. A yes or no is TRUE or FALSE to Excel, which offers those by itself. */
const YES_NO = "yes,no";

/** The words of an argument that is one of them; nothing for other arguments, and for ranges that are read as a whole. */
export function wordsOf({ words, many }: Param): readonly string[] | undefined {
  return words && many === undefined && words.join() !== YES_NO ? words : undefined;
}

/** Every list of words, once, and the id under which an argument names its own: that of the first argument to use it. */
export function pickLists(catalog: readonly Entry[]): { lists: PickList[]; idOf(param: Param): string | undefined } {
  const ids = new Map<string, string>();
  const lists: PickList[] = [];
  for (const { name, params } of catalog)
    for (const param of params) {
      const words = wordsOf(param);
      if (!words || ids.has(words.join())) continue;
      const id = `${name}${param.name.toUpperCase()}`;
      ids.set(words.join(), id);
      lists.push({ id, type: "string", values: words.map((word) => ({ name: word, stringValue: word, tooltip: "" })) });
    }
  return { lists, idOf: (param) => ids.get(wordsOf(param)?.join() ?? "") };
}
