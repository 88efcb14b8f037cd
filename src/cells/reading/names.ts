import { contentOf, shown } from "../cell";
import { editDistance } from "../edit-distance";
import { HandedOn, Unreadable } from "../error";
import { changed, declared, type Declaration } from "./argument";
import { UNSEEN } from "./digits";

/** A list of names: each key with the other spellings it is known by. */
export type Names<K extends string> = Readonly<Record<K, readonly string[]>>;

/** How many near misses a message offers, and how many names a list may have to be shown whole. */
const OFFERED = 3;
const SHORT_LIST = 6;

/** How many of the names that an ambiguous one may mean are shown; the others are counted. */
const SHOWN_OF_AMBIGUOUS = 12;

/** Names that stand for several of a list, and so for none: what a message offers in their place. */
export type Ambiguous = (plain: string) => readonly string[] | undefined;

/** One name out of a list, in any case, with spaces and hyphens alike. The formula gets the list's key. */
export function oneOf<K extends string>(names: Names<K>, ambiguous?: Ambiguous): Declaration<K> {
  return declared({ kind: "word", words: Object.keys(names) }, "name", (cell, as) => keyIn(names, cell, as, ambiguous));
}

/** Text as it stands, such as the name of a function. */
export const text = declared<string>({ kind: "text" }, "name", (cell, as) => textIn(cell, as, "text"));

/** What something is called, as text: a name, or a number such as that of a log. */
export const label = declared<string>({ kind: "text" }, "name", (cell, as) =>
  typeof cell === "number" ? String(cell) : textIn(cell, as, "text or a number").trim(),
);

const YES_NO: Names<"yes" | "no"> = { yes: ["y", "true", "1"], no: ["n", "false", "0"] };

/** Yes or no, TRUE or FALSE, 1 or 0 as in the sheet's own functions; a blank is no. */
export const yesNo: Declaration<boolean> = changed(
  declared<boolean>({ kind: "yes or no", words: ["yes", "no"] }, "name", (cell, as) =>
    typeof cell === "boolean" ? cell : cell === 1 || keyIn(YES_NO, cell, as) === "yes",
  ),
  { optional: true, default: false },
  (argument) => ({ ...argument, needed: null, whenBlank: () => false }),
);

export function keyIn<K extends string>(
  names: Names<K>,
  cell: unknown,
  name: string,
  ambiguous?: Ambiguous,
  besides = "",
): K {
  const keys = Object.keys(names);
  const given = textIn(cell, name, keys.length <= SHORT_LIST ? `one of ${keys.join(", ")}` : "a name");
  const spellings = spellingsOf(names);
  const key = spellings.get(plain(given)) ?? spellings.get(plain(turnedRound(given)));
  if (key !== undefined) return key as K;
  const several = ambiguous?.(plain(given));
  throw new Unreadable(name, (several ? offerOf(several) : offer(names, given)) + besides, shown(given));
}

/** What a message offers for a name that stands for several. */
function offerOf(several: readonly string[]): string {
  const more = several.length - SHOWN_OF_AMBIGUOUS;
  return `one of ${several.slice(0, SHOWN_OF_AMBIGUOUS).join(", ")}${more > 0 ? ` and ${more} more` : ""}`;
}

function textIn(cell: unknown, name: string, wanted: string): string {
  const content = contentOf(cell);
  if (typeof content === "string") return content;
  if (content !== null && typeof content === "object") throw new HandedOn(content.error, name);
  throw new Unreadable(name, wanted, shown(cell));
}

/** A spelling without what people write differently: capitals, hyphens, dots, fraction signs. */
function plain(spelling: string): string {
  return spelling
    .replace(UNSEEN, "")
    .replace(/[¼-¾⅐-⅞]/g, (fraction) => ` ${fraction.normalize("NFKC")}`)
    .normalize("NFKD")
    .replace(/[\u0300-\u036f]/g, "")
    .replace(/⁄/g, "/")
    .toLowerCase()
    .replace(/[\s\-‐-―_.,'"″”]+/g, " ")
    .trim();
}

/** "Oak, white" as handbooks list it is white oak. */
function turnedRound(spelling: string): string {
  const [noun, ...rest] = spelling.split(",");
  return rest.length === 1 ? `${rest[0]} ${noun}` : spelling;
}

const known = new WeakMap<object, Map<string, string>>();

function spellingsOf(names: Names<string>): Map<string, string> {
  let spellings = known.get(names);
  if (!spellings) {
    const entries = Object.entries(names);
    spellings = new Map(entries.flatMap(([key, others]) => others.map((other) => [plain(other), key] as const)));
    for (const [key] of entries) spellings.set(plain(key), key);
    known.set(names, spellings);
  }
  return spellings;
}

/** What a message offers for an unknown name: the whole of a short list, or the nearest of a long one. */
function offer(names: Names<string>, given: string): string {
  const keys = Object.keys(names);
  if (keys.length <= SHORT_LIST) return `one of ${keys.join(", ")}`;
  const nearest = nearestKeys(names, plain(given));
  return nearest.length > 0 ? `a known name (nearest: ${nearest.join(", ")})` : "a known name";
}

/**
 * Words count before letters: of names with the same last word, which says what kind of thing it is, then of names with
 * any word in common, those with fewest other words are nearest. A word that no name has may be a slip of the finger.
 */
function nearestKeys(names: Names<string>, wanted: string): string[] {
  const { spellings, words } = wordsIn(names);
  const asked = wanted.split(" ").slice(0, MOST_WORDS);
  const askedWords = asked.map((word) => ({ word, known: words.has(word) }));
  const distances = new Map<string, number>();
  for (const [key, spelling] of spellings) {
    const distance = wordsApart(askedWords, spelling);
    if (distance < (distances.get(key) ?? Infinity)) distances.set(key, distance);
  }
  const near = [...distances].sort(([, a], [, b]) => a - b);
  const ofItsKind = near.filter(([, distance]) => distance < OTHER_KIND);
  return (ofItsKind.length > 0 ? ofItsKind : near).slice(0, OFFERED).map(([key]) => key);
}

interface WordsIn {
  /** Each spelling in its words, with its key. One that is turned round at a comma would end in the wrong word. */
  spellings: (readonly [key: string, spelling: readonly string[]])[];
  words: ReadonlySet<string>;
}

const taken = new WeakMap<object, WordsIn>();

function wordsIn(names: Names<string>): WordsIn {
  let found = taken.get(names);
  if (!found) {
    const spellings = Object.entries(names).flatMap(([key, others]) =>
      [key, ...others].filter((one) => !one.includes(",")).map((one) => [key, plain(one).split(" ")] as const),
    );
    found = { spellings, words: new Set(spellings.flatMap(([, words]) => words)) };
    taken.set(names, found);
  }
  return found;
}

/** A word that was asked for, and whether any name has it. */
interface Asked {
  word: string;
  known: boolean;
}

/** A name has no more words than this; what goes on longer is not looked at. */
const MOST_WORDS = 8;

/** What a name of another kind is farther away than any of the same kind. */
const OTHER_KIND = 100;

/** How far two names are apart, in words; infinite where they have none in common. */
function wordsApart(wanted: readonly Asked[], known: readonly string[]): number {
  let shared = 0;
  let ofSlips = 0;
  let sameKind = false;
  for (const word of wanted) {
    const slips = Math.min(...known.map((other) => slipsBetween(word, other)));
    if (slips === Infinity) continue;
    shared++;
    ofSlips += slips;
    sameKind ||= slipsBetween(word, known.at(-1)!) < Infinity;
  }
  if (shared === 0) return Infinity;
  return wanted.length + known.length - 2 * shared + ofSlips + (sameKind ? 0 : OTHER_KIND);
}

/** The share of a word's letters that are wrong, or infinity where it is another word. */
function slipsBetween({ word, known: isKnown }: Asked, known: string): number {
  if (word === known) return 0;
  if (isKnown) return Infinity;
  const shorter = Math.min(word.length, known.length);
  const most = shorter < SHORT_WORD ? 0 : shorter === SHORT_WORD ? 1 : 2;
  if (Math.abs(word.length - known.length) > most) return Infinity;
  const edits = editDistance(word, known);
  return edits <= most ? edits / shorter : Infinity;
}

/** A word of so many letters may have one of them wrong, a longer one two (two letters that changed places are two). */
const SHORT_WORD = 4;
