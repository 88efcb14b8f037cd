import { contentOf } from "./cell";
import { cellError, HandedOn, Unreadable, type CellError } from "./error";
import type { Argument, Declarations } from "./reading/argument";
import { commonShape, inputOf, isSpread, mustBeSingle, type Input } from "./shape";
import { boundParts, published, type PublishedArgument } from "./reading/parts";

/** What an answered cell holds. */
export type Answer = number | string | boolean | CellError;

/** A worksheet function as a host calls it: a range for each argument, nothing for one that is left out. */
export interface WorksheetFunction {
  (...ranges: Ranges): Answer[][];
  /** Its arguments in the order of a call, as they are declared. */
  readonly takes: readonly PublishedArgument[];
  /** What a call of single values hands to its formula, or why it is refused. */
  readonly reads: (...ranges: Ranges) => Readonly<Record<string, unknown>> | CellError;
}

/** The cells of a call, argument by argument; nothing for one that is left out. */
type Ranges = (unknown[][] | null | undefined)[];

/** A cell of a table as a formula gives it: nothing for an empty cell, an error for a cell without an answer. */
export type TableCell = Answer | undefined | Error;

/**
 * Lifts a formula over ranges. One value goes with every row, a column with a column, a row against a column makes a
 * grid; the answer has the shape of the input. A row that throws becomes a cell error in its place, and a row whose
 * numbers are all blank answers 0.
 */
export function spread<A extends object>(
  declarations: Declarations<A>,
  formula: (given: A) => number | string | boolean,
): WorksheetFunction {
  return worksheetFunction(declarations, (inputs) => {
    const { height, width } = commonShape(inputs);
    const deciding = decidingInputs(inputs);
    const given = {} as A;
    const answers: Answer[][] = [];
    for (let row = 0; row < height; row++) {
      const line: Answer[] = [];
      for (let column = 0; column < width; column++) line.push(answerAt(inputs, deciding, row, column, given, formula));
      answers.push(line);
    }
    return answers;
  });
}

/** Answers one table for single values and lists. An empty cell is "", because Excel would show null as 0. */
export function table<A extends object>(
  declarations: Declarations<A>,
  formula: (given: A) => TableCell[][],
): WorksheetFunction {
  return worksheetFunction(declarations, (inputs) => {
    mustBeSingle(inputs);
    if (isUnfilled(inputs, decidingInputs(inputs), 0, 0)) return [[0]];
    return formula(filled({} as A, inputs, 0, 0)).map((row) => row.map(tableCell));
  });
}

/** The one place that catches. A call without any argument is no unfilled row: it says what is wanted. */
function worksheetFunction(
  declarations: Declarations<object>,
  answer: (inputs: Input[]) => Answer[][],
): WorksheetFunction {
  const takes = published(declarations);
  const places = new Map(takes.map(({ name }, place) => [name, place]));
  const inputsOf = (ranges: Ranges) =>
    boundParts(declarations, (name) => handed(ranges, places.get(name)!)).map(inputOf);
  // An argument that is repeated gets all the ranges from its place on.
  const handed = (ranges: Ranges, place: number) =>
    takes[place]!.facts.many === "repeated" ? ranges.slice(place) : ranges[place];
  const wanted = takes.filter(({ facts }) => !facts.optional).map(({ name }) => name);
  const called = (...ranges: Ranges): Answer[][] => {
    try {
      if (wanted.length > 0 && !ranges.some(Array.isArray))
        throw new Unreadable("arguments", wanted.join(", "), "none");
      return answer(inputsOf(ranges));
    } catch (thrown) {
      return [[cellError(thrown)]];
    }
  };
  const reads = (...ranges: Ranges) => {
    try {
      const inputs = inputsOf(ranges);
      mustBeSingle(inputs);
      return filled<Record<string, unknown>>({}, inputs, 0, 0);
    } catch (thrown) {
      return cellError(thrown);
    }
  };
  // Its length is how many arguments it takes, as of any function.
  const length = takes.at(-1)?.facts.many === "repeated" ? MOST_ARGUMENTS : takes.length;
  return Object.assign(Object.defineProperty(called, "length", { value: length }), { takes, reads });
}

/** What is read in the cells of one argument, a value for each cell, or why a call with them would be refused. */
export function readingOf({ readIn }: PublishedArgument, cells: unknown[][]): unknown[] | CellError {
  try {
    return readIn(cells);
  } catch (thrown) {
    return cellError(thrown);
  }
}

/** Excel hands no function more. */
const MOST_ARGUMENTS = 255;

/** `given` is one object refilled for every row: a new one each would be most of the time a long column takes. */
function answerAt<A extends object>(
  inputs: Input[],
  deciding: Input[],
  row: number,
  column: number,
  given: A,
  formula: (given: A) => number | string | boolean,
): Answer {
  try {
    if (isUnfilled(inputs, deciding, row, column)) return 0;
    return sound(formula(filled(given, inputs, row, column)));
  } catch (thrown) {
    return cellError(errorAmong(inputs, row, column) ?? thrown);
  }
}

function cellAt(input: Input, row: number, column: number): unknown {
  return input.argument.cells[input.height === 1 ? 0 : row]![input.width === 1 ? 0 : column];
}

/**
 * The arguments that show whether anybody has filled a row in: the numbers that cannot be 0 in nature, or, where a function
 * asks for none, the names. One value that stands for every row begins none of them, so beside a column the column decides.
 */
function decidingInputs(inputs: Input[]): Input[] {
  const numbers = inputs.filter(({ argument }) => argument.needed === "number");
  const names = inputs.filter(({ argument }) => argument.needed === "name");
  return [numbers.filter(isSpread), names.filter(isSpread), numbers, names].find((some) => some.length > 0) ?? [];
}

/** Whether the row is one that nobody has filled in yet. A row with an error in any cell is not: the error is handed on. */
function isUnfilled(inputs: Input[], deciding: Input[], row: number, column: number): boolean {
  if (deciding.length === 0) return false;
  for (const input of deciding) if (!input.argument.isBlank(cellAt(input, row, column))) return false;
  return !errorAmong(inputs, row, column);
}

/** An error in an input cell, which outranks whatever else is wrong with its row. */
function errorAmong(inputs: Input[], row: number, column: number): HandedOn | undefined {
  for (const input of inputs) {
    const content = contentOf(cellAt(input, row, column));
    if (content !== null && typeof content === "object") return new HandedOn(content.error, input.argument.name);
  }
  return undefined;
}

function filled<A extends object>(given: A, inputs: Input[], row: number, column: number): A {
  for (const input of inputs) given[input.key as keyof A] = valueAt(input, row, column) as A[keyof A];
  return given;
}

function valueAt(input: Input, row: number, column: number): unknown {
  if (input.height > 1 || input.width > 1) return valueOf(input.argument, cellAt(input, row, column));
  input.constant ??= readOnce(input);
  if ("thrown" in input.constant) throw input.constant.thrown;
  return input.constant.value;
}

function readOnce(input: Input): { value?: unknown; thrown?: unknown } {
  try {
    return { value: valueOf(input.argument, cellAt(input, 0, 0)) };
  } catch (thrown) {
    return { thrown };
  }
}

function valueOf(argument: Argument<unknown>, cell: unknown): unknown {
  if (!argument.isBlank(cell)) return argument.read(cell, argument.name);
  return argument.whenBlank(cell, argument.name);
}

function tableCell(cell: TableCell): Answer {
  return cell instanceof Error ? cellError(cell) : sound(cell ?? "");
}

/** No NaN and no infinity leaves by this door. */
function sound(answer: Answer): Answer {
  if (typeof answer === "number") {
    if (Number.isFinite(answer)) return answer;
    return Number.isNaN(answer)
      ? cellError(new Error("an answer that is not a number"))
      : { error: "#N/A", message: "The answer is too large to be a number" };
  }
  return answer;
}
