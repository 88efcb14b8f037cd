import type { Param } from "../../../catalog/entry";
import { FILLER, MEANINGS } from "../search-words";
import { wordsOf, type ReadHeading } from "./heading-read";
import { TRADE_WORDS } from "./trade-words.table";

/** How much a heading says for an argument: its very words, words among others, a word of the sentence about it. */
const [SAME, AMONG_OTHERS, PERHAPS, ANOTHER_WORD, IN_SENTENCE] = [10, 7, 5, 6, 3];

/** A phrase of two words says more than one of them; a word that stands beside for no reason says that less is meant. */
const FOR_EACH_WORD = 0.5;
const FOR_EACH_STRANGER = 1;
const MOST_STRANGERS = 3;

/** Words that stand in a heading and change nothing. */
const PLAIN = new Set([
  ...FILLER,
  "log",
  "logs",
  "piece",
  "each",
  "avg",
  "average",
  "mean",
  "no",
  "pct",
  "percent",
  "board",
  "boards",
  "est",
]);

/** What a heading may say for an argument, in words. */
export interface Saying {
  words: readonly (readonly string[])[];
  perhaps: readonly (readonly string[])[];
  beside: ReadonlySet<string>;
  never: readonly (readonly string[])[];
  sentence: ReadonlySet<string>;
}

const known = new Map<string, Saying>();

/** Arguments of one name have the same words; of pulley1 they are those of pulley with a 1 behind. */
export function sayingOf({ name, text }: Param): Saying {
  const key = `${name}: ${text}`;
  const found = known.get(key) ?? made(name, text);
  known.set(key, found);
  return found;
}

function made(name: string, text: string): Saying {
  const [, stem = name, number = ""] = /^(.*?)(\d*)$/.exec(name) ?? [];
  const { words = "", perhaps = "", beside = "", never = "" } = TRADE_WORDS[name] ?? TRADE_WORDS[stem] ?? {};
  const numbered = (phrase: string[]) => (number === "" ? phrase : [...phrase, number]);
  return {
    words: [[stem], ...phrases(words)].map(numbered),
    perhaps: [...phrases(perhaps), ...(number === "" ? [] : [[stem], ...phrases(words)])],
    beside: new Set(phrases(beside).flat()),
    never: phrases(never),
    sentence: new Set(wordsOf(text)),
  };
}

function phrases(list: string): string[][] {
  return list === "" ? [] : list.split(", ").map((phrase) => phrase.split(" "));
}

/**
 * How well the words of a heading fit, given the names of the function's other arguments: "Sticker thk" is rather the
 * sticker than the thickness. 0 where they say nothing of it, and less where they say another thing.
 */
export function wordWeight(
  saying: Saying,
  { words, withUnit, unit }: ReadHeading,
  others: ReadonlySet<string>,
): number {
  const bare = weightOf(saying, words, others);
  return unit === undefined || bare < 0 ? bare : Math.max(bare, weightOf(saying, withUnit, others));
}

function weightOf(saying: Saying, words: readonly string[], others: ReadonlySet<string>): number {
  if (words.length === 0) return 0;
  if (saying.never.some((phrase) => holds(words, phrase) && !covered(saying, words, phrase))) return -1;
  const by = (list: Saying["words"], among: number, whole: number) =>
    Math.max(0, ...list.map((phrase) => phraseWeight(phrase, saying, words, others, among, whole)));
  const weight = Math.max(by(saying.words, AMONG_OTHERS, SAME), by(saying.perhaps, PERHAPS - 1, PERHAPS));
  if (weight > 0) return weight;
  if (saying.words.some((phrase) => phrase.length === 1 && words.some((word) => MEANINGS.get(phrase[0]!)?.has(word))))
    return ANOTHER_WORD - strangers(saying, words, [], others);
  const telling = words.filter((word) => !PLAIN.has(word));
  return telling.length > 0 && telling.every((word) => saying.sentence.has(word)) ? IN_SENTENCE : 0;
}

function phraseWeight(
  phrase: readonly string[],
  saying: Saying,
  words: readonly string[],
  others: ReadonlySet<string>,
  among: number,
  whole: number,
) {
  if (!holds(words, phrase)) return 0;
  const beside = strangers(saying, words, phrase, others);
  const length = (phrase.length - 1) * FOR_EACH_WORD;
  return (beside === 0 ? whole : among - Math.min(beside, MOST_STRANGERS) * FOR_EACH_STRANGER) + length;
}

/** How many words of a heading are neither the phrase's nor such as stand beside it; another argument's name counts twice. */
function strangers(
  { beside }: Saying,
  words: readonly string[],
  phrase: readonly string[],
  others: ReadonlySet<string>,
): number {
  return words
    .filter((word) => !phrase.includes(word) && !beside.has(word) && !PLAIN.has(word))
    .reduce((count, word) => count + (others.has(word) ? 2 : 1), 0);
}

function holds(words: readonly string[], phrase: readonly string[]): boolean {
  return words.some((_, at) => phrase.every((word, i) => words[at + i] === word));
}

/** Whether a phrase that speaks against is but a part of one that speaks for: "end" in "small end". */
function covered(saying: Saying, words: readonly string[], against: readonly string[]): boolean {
  return saying.words.some(
    (phrase) => phrase.length > against.length && holds(words, phrase) && holds(phrase, against),
  );
}
