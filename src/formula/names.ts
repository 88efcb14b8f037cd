import { rewritePlain, scan } from "./scan";
import type { DefinedName } from "./defined-name";
import { asTyped } from "./typed";

const WORD =
  /(?<![\w.$!\]\\\u0080-\uFFFF])((?:[A-Z_\u0080-\uFFFF][\w.\u0080-\uFFFF]*!)?)([A-Z_\\\u0080-\uFFFF][\w.\\?\u0080-\uFFFF]*)(?![\w.!:\\\u0080-\uFFFF])/gi;

/** One reference with its sheet needs no brackets round it. */
const ONE_REFERENCE = /^(?:'(?:[^']|'')+'|[\w.\u0080-\uFFFF]+)!\$?[A-Z]{1,3}\$?\d+(?::\$?[A-Z]{1,3}\$?\d+)?$/i;

/** Names may lean on names, but not for ever: one that leans on itself stays a name, which the engine does not know. */
const DEEPEST = 20;
const LONGEST_FORMULA = 32_768;

/** Puts in the place of every name what it stands for, as the sheet with this number understands it. */
export function withoutNames(
  formula: string,
  names: readonly DefinedName[],
  sheets: readonly string[],
  sheet: number,
): string {
  if (names.length === 0) return formula;
  let current = formula;
  for (let depth = 0; depth < DEEPEST; depth++) {
    const next = rewritePlain(current, (plain) =>
      plain.replace(WORD, (all, prefix: string, word: string) => {
        const home = prefix
          ? sheets.findIndex((one) => one.toLowerCase() === prefix.slice(0, -1).toLowerCase())
          : sheet;
        const name = nameSeenFrom(home, word, names);
        return name ? inBrackets(name.refersTo) : all;
      }),
    );
    if (next === current) return current;
    if (next.length > LONGEST_FORMULA) break;
    current = next;
  }
  return formula;
}

function nameSeenFrom(sheet: number, word: string, names: readonly DefinedName[]): DefinedName | undefined {
  const same = names.filter(({ name }) => name.toLowerCase() === word.toLowerCase());
  return same.find((name) => name.sheet === sheet) ?? same.find((name) => name.sheet === undefined);
}

function inBrackets(refersTo: string): string {
  const text = refersTo.trim().replace(/^=/, "");
  return ONE_REFERENCE.test(text) || /^_xlfn\.LAMBDA\(|^LAMBDA\(/i.test(text) ? text : `(${text})`;
}

/** A formula that asks one of our functions. */
export function asksBole(formula: string): boolean {
  return scan(formula).some(
    ({ kind, text }) => kind === "plain" && /_xldudf_BOLE_[A-Z0-9]|(?<![\w.!])BOLE\.[A-Z]/i.test(text),
  );
}

/** A formula from the file as our pages write it; some programs write every function small. */
export function asRead(stored: string): string {
  return rewritePlain(asTyped(stored), (plain) =>
    plain.replace(/(?<![\w.!])bole\.[a-z0-9]+/gi, (name) => name.toUpperCase()),
  );
}
