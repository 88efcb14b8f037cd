/** One worksheet function as the catalog lists it. */
export interface Entry {
  name: string;
  /** The topic folder it stands in, which is also the step of the job. */
  topic: string;
  summary: string;
  remarks: string[];
  params: Param[];
  returns: string;
  examples: Example[];
  cautions: string[];
  see: string[];
  /** Names of the drawings that explain it, in src/catalog/pictures. */
  pictures: string[];
  /** What a sawyer would type into a search box. */
  words: string[];
  formulas: Formula[];
  grade: string;
}

/** One argument: the sentence written about it, and what its declaration knows. */
export interface Param extends Known {
  optional: boolean;
  /** Whether a whole range is read as one argument, and how. */
  many?: string;
  /** What an example that answers gives for it. */
  example?: string;
  /** The rows that a table of settings may have. */
  settings?: SettingEntry[];
}

/** A setting of a table of settings, and the group that it stands in. */
export interface SettingEntry extends Known {
  group: string;
  /** What holds where it is left out, where no figure says it. */
  otherwise?: string;
}

/** What is known of anything that is typed: an argument, or the value of a setting. */
interface Known {
  name: string;
  text: string;
  /** The row of the reading page that says how it is read. */
  kind: string;
  /** What a bare number means. */
  bare?: string;
  /** Examples of what is read. */
  reads?: string;
  /** The words that are allowed, where they are a set. */
  words?: string[];
  /** What holds where it is left out, where that is a number or a word. */
  default?: string | number | boolean;
  /** What a zero means, and how a zero that is meant is typed. */
  zero?: string;
  zeroAs?: string;
}

export interface Example {
  formula: string;
  result: string;
}

/** A formula of src/math that the function rests on. */
export interface Formula {
  name: string;
  sentence: string;
  formula: string;
  sources: string[];
  range: string;
  checked: string;
  grade: string;
}

/** The topics in the order of the job, each with the question it answers. */
export const TOPICS: Readonly<Record<string, string>> = {
  logs: "Logs: what is in it",
  boards: "Boards: what came out",
  wood: "Wood: what it weighs",
  sawing: "Sawing: what to cut",
  drying: "Drying: when it is ready",
  mill: "Mill: what to set it to",
  haul: "Haul and lift",
  money: "Money",
  about: "About the numbers",
};
