import { readFileSync } from "node:fs";
import { join } from "node:path";
import { createContext, runInContext } from "node:vm";
import { builtFolder } from "../excel/build";

/** The script as it is pasted into the online sheet. */
export const script = readFileSync(join(await builtFolder(), "bole-online.gs"), "utf8");

/** A world that has nothing but what ECMAScript itself has. */
const world = createContext({});

/** The globals of that world before the script came; two of them are the engine's and not the language's. */
export const ownGlobals = new Set(runInContext("Object.getOwnPropertyNames(globalThis)", world) as string[]);
export const notOfTheLanguage = ["WebAssembly", "console"];

runInContext(script, world);

/** What the script has declared: the functions that the host would list, and whatever else. */
export function declared(): string[] {
  return (runInContext("Object.getOwnPropertyNames(globalThis)", world) as string[]).filter(
    (name) => !ownGlobals.has(name),
  );
}

/** What a function answers to arguments as that host hands them over; it throws what the function throws. */
export function asked(name: string, ...given: unknown[]): unknown {
  const answer = (runInContext(name, world) as (...given: unknown[]) => unknown)(...given);
  // The script's lists are of its own world; here they are compared with ours.
  return answer === undefined ? undefined : (JSON.parse(JSON.stringify(answer)) as unknown);
}

/** What a person reads of an answer: that host tells the message of what was thrown. */
export function call(name: string, ...given: unknown[]): unknown {
  try {
    return asked(name, ...given);
  } catch (thrown) {
    return (thrown as Error).message;
  }
}

/** A day as that host's own clock makes it. */
export function day(year: number, month: number, date: number): unknown {
  return runInContext(`new Date(${year}, ${month - 1}, ${date})`, world);
}
