import ts from "typescript";
import { readdirSync } from "node:fs";
import { join, resolve } from "node:path";
import { commentOf } from "../../../src/catalog/comments/comment";
import { moduleAt } from "../../../src/catalog/comments/modules";

const MATH = resolve(import.meta.dirname, "../../../src/math");

/** A formula as its comment has it, and the file of the function that runs. */
export interface Commented {
  name: string;
  path: string;
  text: string;
  /** The parameters of the function, where it takes them one by one and not as an object. */
  oneByOne: string[] | undefined;
  /** The keys that it takes out of its object. */
  keys: string[];
}

/** Every formula that a comment of src/math holds. */
export function everyFormula(): Commented[] {
  const files = readdirSync(MATH, { recursive: true, encoding: "utf8" }).filter((file) => file.endsWith(".ts"));
  return files.sort().flatMap((file) => {
    const path = join(MATH, file);
    const { declared, file: source } = moduleAt(path);
    return [...declared].flatMap(([name, statement]) => {
      const texts = commentOf(statement, source)?.tags.get("formula");
      return texts ? [{ name, path, text: texts.join("; "), ...parametersOf(statement) }] : [];
    });
  });
}

function parametersOf(statement: ts.Statement): Pick<Commented, "oneByOne" | "keys"> {
  const parameters = ts.isFunctionDeclaration(statement) ? [...statement.parameters] : [];
  const [first] = parameters;
  if (first && ts.isObjectBindingPattern(first.name)) {
    const keys = first.name.elements.filter(({ dotDotDotToken }) => !dotDotDotToken).map(({ name }) => name.getText());
    return { oneByOne: undefined, keys };
  }
  const isOneObject = parameters.length === 1 && !/^(?:number|WoodGiven|CubicUnit)$/.test(first?.type?.getText() ?? "");
  return isOneObject
    ? { oneByOne: undefined, keys: [] }
    : { oneByOne: parameters.map(({ name }) => name.getText()), keys: [] };
}
