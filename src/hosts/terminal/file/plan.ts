import type { CellAnswer, Engine } from "../../../engine/engine";
import { hasTooManySteps, MOST_STEPS } from "../../../engine/too-many-steps";
import { ADD_IN } from "../../../catalog/about/add-in";
import { asksOtherAddIn, withCalls } from "../../../formula/functions";
import { registry } from "../../../functions/registry";
import { isOneCell } from "../../../formula/typed";
import type { Held } from "../../../xlsx/held";
import { calculate, heldOf, type Reasons, type Result } from "./calculate";
import { dependentsOf } from "./dependents";
import { inputsWithoutValue } from "./inputs";
import { misreadsDays, type Formula, type Workbook } from "./workbook";

/** What the engine makes of a workbook. */
export interface Calculated {
  /** The formulas that ask one of our functions, themselves or through a name. */
  bole: Formula[];
  /** What the engine answers for those and for what leans on them. */
  results: Result[];
  /** Formulas among those that keep the file's value, and why. */
  unable: Reasons;
  /**
   * The spreadsheet's own formulas that lean on ours, and whose value in the file the engine does not find again from
   * the file's other values: either the file is out of date, or the engine differs from the program that wrote it.
   */
  doubtful: Set<Formula>;
  /** Formulas of other add-ins, wherever they stand. */
  foreign: Formula[];
  linksOutside: Formula[];
  /** Formulas that find their cells only while they calculate, so that nobody can say what they lean on. */
  searching: Formula[];
}

/** Calculates our formulas and what leans on them; everything else counts as the file shows it. */
export async function calculateBole(workbook: Workbook, engine: Engine, keepDoubtful: boolean): Promise<Calculated> {
  const all = workbook.sheets.flatMap(({ formulas }) => formulas);
  const bole = all.filter((formula) => formula.bole);
  const leaning = dependentsOf(bole, all);
  // Other formulas count as the file's values; those without one must be calculated to be an input at all.
  const inputs = inputsWithoutValue([...bole, ...leaning], all);
  const concerned = [...new Set([...bole, ...leaning, ...inputs])];
  const known = await functionsUnknownTo(engine, concerned);
  const unable: Reasons = new Map(concerned.flatMap((formula) => reasonNotToAsk(formula, known)));
  for (const formula of concerned)
    if (misreadsDays(formula, workbook))
      unable.set(formula, "it reckons with days, which this workbook counts from 1904");
  const wanted = (formulas: readonly Formula[]) => [...new Set([...formulas, ...inputs])];
  const others = inputs.filter(({ bole }) => !bole);
  const doubtful = await doubtfulOf(workbook, { leaning, inputs: others }, unable, engine);
  if (keepDoubtful)
    for (const formula of doubtful) unable.set(formula, "the engine finds another value than the file's");
  const results = await calculate(workbook, wanted([...bole, ...leaning]), unable, engine);
  const ours = new Set([...bole, ...leaning]);
  return {
    bole,
    results: results.filter(({ formula }) => ours.has(formula)),
    unable: new Map([...unable].filter(([formula]) => ours.has(formula))),
    doubtful,
    foreign: all.filter(({ stored }) => asksOtherAddIn(ADD_IN, stored)),
    linksOutside: all.filter(({ outside }) => outside === "another workbook"),
    searching: all.filter((formula) => !ours.has(formula) && formula.searches),
  };
}

/** With our answers as the file holds them, do the spreadsheet's own formulas answer as the file says? */
async function doubtfulOf(
  workbook: Workbook,
  { leaning, inputs }: { leaning: readonly Formula[]; inputs: readonly Formula[] },
  unable: Reasons,
  engine: Engine,
): Promise<Set<Formula>> {
  const checkable = leaning.filter((formula) => formula.cached !== null && !unable.has(formula));
  if (checkable.length === 0) return new Set();
  const results = await calculate(workbook, [...new Set([...checkable, ...inputs])], new Map(unable), engine);
  const held = results.filter(({ formula }) => formula.cached !== null);
  return new Set(held.filter((result) => !agrees(result)).map(({ formula }) => formula));
}

/** The answer is the value that the file holds. */
export function agrees({ formula, values }: Result): boolean {
  return values[0]?.[0] !== undefined && sameValue(values[0][0], formula.cached);
}

/** Numbers agree when they differ by less than programs differ in the last digits of the same sum. */
const LAST_DIGITS = 1e-11;

export function sameValue(answer: CellAnswer, held: Held): boolean {
  const value = heldOf(answer);
  if (typeof value === "number" && typeof held === "number")
    return Math.abs(value - held) <= LAST_DIGITS * Math.max(1, Math.abs(value), Math.abs(held));
  return value === held || (value === "" && held === null);
}

function reasonNotToAsk(formula: Formula, unknown: ReadonlySet<string>): [Formula, string][] {
  const { outside, calls, stored } = formula;
  const stranger = calls.find((name) => unknown.has(name));
  if (outside) return [[formula, `it points at ${outside}`]];
  if (asksOtherAddIn(ADD_IN, stored)) return [[formula, "it uses another add-in"]];
  if (hasTooManySteps(formula.forEngine))
    return [[formula, `it has more than ${MOST_STEPS} steps, too many for the engine`]];
  if (takesOneOfMany(stored)) return [[formula, "it takes one cell of several with @"]];
  return stranger ? [[formula, `it uses ${stranger}, which the engine does not know`]] : [];
}

/** In the file `@A1:A9`, the cell in this row, is SINGLE(A1:A9), of which the engine would take all nine. */
function takesOneOfMany(stored: string): boolean {
  if (!/SINGLE\(/i.test(stored)) return false;
  let takes = false;
  withCalls(stored, (name, inside) => {
    const one = inside[0]?.kind === "sheet" ? inside.slice(1) : inside;
    const isOne = (one.length === 1 && isOneCell(one[0])) || one[0]?.kind === "function";
    takes ||= /^(?:_xlfn\.)?SINGLE$/i.test(name) && !isOne;
    return undefined;
  });
  return takes;
}

/** The functions that these formulas use and the engine does not have. */
async function functionsUnknownTo(engine: Engine, formulas: readonly Formula[]): Promise<Set<string>> {
  const called = new Set(formulas.flatMap(({ calls }) => calls));
  const names = [...called].filter((name) => !isOurs(name));
  if (names.length === 0) return new Set();
  const answers = await engine.evaluate(names.map((name) => `=${name}()`));
  return new Set(names.filter((_, at) => saysUnknown(answers[at])));
}

function isOurs(name: string): boolean {
  return name.startsWith(`${ADD_IN}.`) && name.slice(ADD_IN.length + 1) in registry;
}

function saysUnknown(answer: unknown): boolean {
  const { error, message = "" } = (answer ?? {}) as { error?: string; message?: string };
  return error === "#NAME?" && message.startsWith("There is no function");
}
