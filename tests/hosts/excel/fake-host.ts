/* What every object of the stand-in for Excel is made with; see fake-excel.ts. */

import type { FakeWorkbook } from "./fake-cells";

/** Names of what Excel really has, so that the stand-in cannot make anything up. */
export type Members<Real> = { [Member in keyof Real]?: unknown };

type Getters = Record<string, () => unknown>;
type Setters = Record<string, (value: never) => void>;

/** The workbook, and the steps that wait for the next sync. */
export interface FakeHost {
  book: FakeWorkbook;
  later: (step: () => void) => void;
}

export function fail(code: string, why: string): never {
  throw Object.assign(new Error(why), { code });
}

/** An object whose properties can be read once they are loaded and synced, and are set with the next sync. */
export function loadable<Methods extends object>(
  { later }: FakeHost,
  name: string,
  { getters = {}, setters = {}, methods }: { getters?: Getters; setters?: Setters; methods?: Methods },
) {
  const loaded: Record<string, unknown> = {};
  const load = (wanted: string) =>
    later(() => {
      for (const path of wanted.split(/,\s*/)) {
        const property = path.split("/")[0]!;
        const getter = getters[property] ?? fail("InvalidArgument", `${name} has no property ${property}`);
        loaded[property] = getter();
      }
    });
  const made = { load, ...methods };
  for (const property of new Set([...Object.keys(getters), ...Object.keys(setters)]))
    Object.defineProperty(made, property, {
      configurable: true,
      get: () =>
        property in loaded
          ? loaded[property]
          : fail("PropertyNotLoaded", `${name}.${property} is not available. Load it and sync first.`),
      set: (value: never) => later(() => (setters[property] ?? fail("ReadOnly", `${property} cannot be set`))(value)),
    });
  return made as typeof made & Record<string, unknown>;
}
