import { basename, extname } from "node:path";
import { startEngine, type Engine } from "../../../engine/engine";
import { quietly } from "../quietly";
import { fromWhereTyped } from "../where-typed";
import type { Made } from "./made";
import { mustBeFree, read, write } from "./on-disk";
import { Refused } from "../../../xlsx/refused";

/** What a command does with a workbook. */
export interface Work {
  name: string;
  does: string;
  /** Whether the result may take the input's place when that is asked for. */
  inPlace: boolean;
  /** An option that must be given, with the words that it takes. */
  choice?: { option: string; words: readonly string[] };
  make(bytes: Uint8Array, at: Date, chosen: string): Promise<Made>;
}

/** Work that the engine does, which is started for it and stopped again. */
export function withEngine(make: (bytes: Uint8Array, engine: Engine, at: Date) => Promise<Made>): Work["make"] {
  return async (bytes, at) => {
    const engine = await startEngine();
    return quietly(() => make(bytes, engine, at)).finally(() => engine.stop());
  };
}

interface Wish {
  from: string;
  to: string;
  overwrite: boolean;
  at: Date;
  chosen: string;
}

const [DONE, REFUSED, WRONG_USE] = [0, 1, 2];

/** Runs a command and answers its exit code: 0 done, 1 refused, 2 wrong use. */
export async function run(work: Work, words: readonly string[], now: Date): Promise<number> {
  const wish = wishFrom(words, now, work.choice);
  if (typeof wish === "string") {
    const choice = work.choice ? ` ${work.choice.option} ${work.choice.words.join("|")}` : "";
    const use = `Use: npm run --silent ${work.name} -- in.xlsx out.xlsx${choice} [--overwrite] [--date 2026-03-01]`;
    if (wish === "help") console.log(`${work.does}\n${use}`);
    else console.error(`${wish}\n${use}`);
    return wish === "help" ? DONE : WRONG_USE;
  }
  try {
    console.log(await fulfil(work, wish));
    return DONE;
  } catch (fault) {
    if (!(fault instanceof Error)) throw fault;
    const why = fault instanceof Refused ? fault.message : `a fault in Bole itself, please report it: ${fault.message}`;
    console.error(oneLine(`${wish.from}: ${why}. Nothing was written.`));
    return REFUSED;
  }
}

/** What the words behind the command ask for, or what is wrong with them. */
function wishFrom(words: readonly string[], now: Date, choice: Work["choice"]): Wish | string {
  const paths: string[] = [];
  let [overwrite, at, chosen] = [false, onTheWall(now), ""];
  for (let i = 0; i < words.length; i++) {
    const word = words[i]!;
    if (word === "--help") return "help";
    else if (word === "--overwrite") overwrite = true;
    else if (word === "--date" || word.startsWith("--date=")) {
      const day = word === "--date" ? (words[++i] ?? "") : word.slice("--date=".length);
      const read = dayFrom(day);
      if (!read) return `--date wants a day such as 2026-03-01, not "${day}"`;
      at = read;
    } else if (choice && (word === choice.option || word.startsWith(`${choice.option}=`))) {
      chosen = word === choice.option ? (words[++i] ?? "") : word.slice(choice.option.length + 1);
      if (!choice.words.includes(chosen)) return wanted(choice, `not "${chosen}"`);
    } else if (word.startsWith("-") && word !== "-") return `There is no option ${word}`;
    else paths.push(word);
  }
  const [from, to] = paths;
  if (!from || !to || paths.length > 2) return `Wanted two paths, got ${paths.length}`;
  if (choice && !chosen) return wanted(choice, "and was not given");
  return { from: fromWhereTyped(from), to: fromWhereTyped(to), overwrite, at, chosen };
}

function wanted({ option, words }: NonNullable<Work["choice"]>, instead: string): string {
  return `${option} wants ${words.join(" or ")}, ${instead}`;
}

/** The hours of the clock on the wall, written as UTC, so that no time zone moves a day. */
function onTheWall(now: Date): Date {
  return new Date(
    Date.UTC(now.getFullYear(), now.getMonth(), now.getDate(), now.getHours(), now.getMinutes(), now.getSeconds()),
  );
}

function dayFrom(text: string): Date | undefined {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(text)) return undefined;
  const day = new Date(`${text}T00:00:00Z`);
  return Number.isNaN(day.getTime()) || day.toISOString().slice(0, 10) !== text ? undefined : day;
}

async function fulfil(work: Work, { from, to, overwrite, at, chosen }: Wish): Promise<string> {
  const bytes = read(from);
  mustBeFree({ from, to, overwrite, inPlace: work.inPlace });
  const made = await work.make(bytes, at, chosen);
  const ending = made.macros ? ".xlsm" : ".xlsx";
  if (extname(to).toLowerCase() !== ending)
    throw new Refused(
      `a workbook ${made.macros ? "with" : "without"} macros needs a name that ends in ${ending}, not ${basename(to)}`,
    );
  write(to, made.bytes, overwrite);
  return oneLine(`Wrote ${to}: ${made.summary}.`);
}

function oneLine(text: string): string {
  return text.replace(/\s*[\r\n]+\s*/g, " ");
}
