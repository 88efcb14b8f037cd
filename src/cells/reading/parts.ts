import type { Range } from "../cell";
import { bound, type Argument, type Declaration, type Declarations, type Facts, type Take } from "./argument";

/** The units that a key ends in, which its published name leaves out: `lengthFt` is `length`. */
const UNIT = /(?<=[a-z0-9])(?:Inches|In|Ft|Lbf|Lb|Psi|Percent|Degrees|Fpm|Hp|Rpm|Hertz|Bf|Min|F)$/;

/** The name that an argument is published with. */
export function publishedName(key: string, { facts }: Declaration<unknown>): string {
  return facts.name ?? key.replace(UNIT, "").toLowerCase();
}

/** The arguments that something is made of, each with its cells. */
export function boundParts(parts: Declarations<object>, take: Take): { key: string; argument: Argument<unknown> }[] {
  return entriesOf(parts).map(([key, part]) => ({ key, argument: part.bind(take, publishedName(key, part)) }));
}

/** One argument as a person gives it, with the keys that lead to its declaration: `boards.widthIn`. */
export interface PublishedArgument {
  readonly name: string;
  readonly path: string;
  readonly facts: Facts;
  /** What is read in cells given for it: a value in base units for each cell, or one for all where it is a list. */
  readonly readIn: (cells: Range) => unknown[];
}

/** The arguments in the order of a call; where several make one thing, each of them. What stands around decides too. */
export function published(
  declarations: Declarations<object>,
  around: Partial<Facts> = {},
  path = "",
): PublishedArgument[] {
  return entriesOf(declarations).flatMap(([key, declaration]) => {
    const facts = { ...declaration.facts, ...around };
    const name = publishedName(key, declaration);
    if (!declaration.parts) return [{ name, path: path + key, facts, readIn: readerOf(declaration, name) }];
    const { optional, many } = facts;
    const passedOn = { ...(optional && { optional, default: undefined }), ...(many && { many }) };
    return published(declaration.parts, passedOn, `${path}${key}.`);
  });
}

function entriesOf(declarations: Declarations<object>): [string, Declaration<unknown>][] {
  return Object.entries(declarations as Record<string, Declaration<unknown>>);
}

/** Reads every cell as a call would, and throws what a call would refuse. */
function readerOf(declaration: Declaration<unknown>, name: string): (cells: Range) => unknown[] {
  return (cells) => {
    const argument = bound(declaration, cells, name);
    return argument.cells
      .flat()
      .map((cell) => (argument.isBlank(cell) ? argument.whenBlank(cell, name) : argument.read(cell, name)));
  };
}
