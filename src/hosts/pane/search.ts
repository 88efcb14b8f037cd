import type { Entry } from "../../catalog/entry";
import { READY_SHEETS } from "../../sheets/ready";

/** Words that stand in every question and tell nothing. */
const FILLER = new Set(
  "a an and at by can do does for from how i in is it its me much my of on or per some that the this to what which will with".split(
    " ",
  ),
);

/** How much a word tells, by where it was found: a name most, then the sawyer's own words, then the rest. */
const WEIGHTS = { name: 8, words: 5, summary: 3, rest: 1 };

/** How often the ready sheets ask each function: what every yard needs. */
const EVERYDAY = new Map<string, number>();
for (const [, name = ""] of JSON.stringify(READY_SHEETS).matchAll(/BOLE\.([A-Z0-9]+)/g))
  EVERYDAY.set(name, (EVERYDAY.get(name) ?? 0) + 1);

/**
 * The functions that a question is about, the best first: those in which every word of it is found, or else those with
 * the most of them. Of equals the one of everyday use comes first, then the one that is needed earlier in the job.
 */
export function found(question: string, catalog: readonly Entry[]): { entries: Entry[]; everyWord: boolean } {
  const asked = wordsOf(question);
  const rated = catalog.map((entry) => ({ entry, ...rating(question, asked, entry) }));
  const most = Math.max(...rated.map(({ matched }) => matched));
  const everyday = ({ name }: Entry) => EVERYDAY.get(name) ?? 0;
  const entries = rated
    .filter(({ matched }) => matched > 0 && matched === most)
    .sort((a, b) => b.score - a.score || everyday(b.entry) - everyday(a.entry))
    .map(({ entry }) => entry);
  return { entries, everyWord: most === asked.length };
}

/** How many of the words are found in a function, and how telling the places are. */
function rating(question: string, asked: string[], entry: Entry): { matched: number; score: number } {
  const name = entry.name.toLowerCase();
  const places = [
    { words: entry.words.flatMap(wordsOf), weight: WEIGHTS.words },
    { words: wordsOf(entry.summary), weight: WEIGHTS.summary },
    { words: restOf(entry).flatMap(wordsOf), weight: WEIGHTS.rest },
  ];
  const perWord = asked.map((word) =>
    Math.max(WEIGHTS.name * bestInName(word, name), ...places.map(({ words, weight }) => weight * best(word, words))),
  );
  const phrase = entry.words.some((words) => words.toLowerCase() === question.trim().toLowerCase());
  const score = perWord.reduce((sum, worth) => sum + worth, phrase ? WEIGHTS.name : 0);
  return { matched: perWord.filter((worth) => worth > 0).length, score };
}

function restOf({ remarks, returns, topic, params, examples }: Entry): string[] {
  const arguments_ = params.flatMap(({ text, settings = [] }) => [
    text,
    ...settings.flatMap((one) => [one.name, one.text]),
  ]);
  return [...remarks, returns, topic, ...arguments_, ...examples.map(({ formula }) => formula)];
}

/** A whole word counts in full, the beginning of one half: typing goes on. */
function best(asked: string, words: string[]): number {
  if (words.includes(asked)) return 1;
  return words.some((word) => word.startsWith(asked)) ? 0.5 : 0;
}

/** A name is several words run together: PULLEYSIZE is found by pulley and by size, and less surely by ley. */
function bestInName(asked: string, name: string): number {
  if (name === asked) return 1;
  if (asked.length < 3 || !name.includes(asked)) return 0;
  return name.startsWith(asked) || name.endsWith(asked) ? 0.75 : 0.5;
}

/** The telling words of a text, one log and many logs alike. */
function wordsOf(text: string): string[] {
  const words = text.toLowerCase().match(/[a-z0-9½¼¾/]+/g) ?? [];
  const telling = words.filter((word) => !FILLER.has(word));
  return (telling.length > 0 ? telling : words).map(stem);
}

/** Logs as log, drying as dry; glass and spring stay. */
function stem(word: string): string {
  const [, start] = /^(.*[aeiouy].*[a-z])(?:ing|(?<!s)s)$/.exec(word) ?? /^([^aeiou]*y)ing$/.exec(word) ?? [];
  return start && start.length > 2 ? start : word;
}
