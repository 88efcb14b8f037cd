import type { Argument, Declaration, Declarations, Facts, Take } from "./argument";

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
}

/** The arguments in the order of a call; where several make one thing, each of them. What stands around decides too. */
export function published(
  declarations: Declarations<object>,
  around: Partial<Facts> = {},
  path = "",
): PublishedArgument[] {
  return entriesOf(declarations).flatMap(([key, declaration]) => {
    const facts = { ...declaration.facts, ...around };
    if (!declaration.parts) return [{ name: publishedName(key, declaration), path: path + key, facts }];
    const { optional, many } = facts;
    const passedOn = { ...(optional && { optional, default: undefined }), ...(many && { many }) };
    return published(declaration.parts, passedOn, `${path}${key}.`);
  });
}

function entriesOf(declarations: Declarations<object>): [string, Declaration<unknown>][] {
  return Object.entries(declarations as Record<string, Declaration<unknown>>);
}
