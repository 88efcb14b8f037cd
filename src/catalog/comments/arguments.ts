import ts from "typescript";
import type { WorksheetFunction } from "../../cells/spread";
import type { Example, Param } from "../entry";
import { known, settingEntry } from "../known";
import { argumentPieces, literal } from "../../formula/literals";
import { declaredIn } from "./modules";
import { commentOf } from "./comment";

/** The arguments of a worksheet function: what their declarations know, and the sentence that stands before each. */
export function paramsOf(takes: WorksheetFunction["takes"], path: string, name: string, examples: Example[]): Param[] {
  const sentences = sentencesOf(path, name);
  return takes.map(({ name: argument, path: place, facts }, at) => {
    const text = sentences.get(place);
    if (!text) throw new Error(`${name}: a comment is missing before ${place}`);
    const { many, rows, reads } = facts;
    const example = exampleOf(examples, at) || String(facts.default ?? firstOf(reads));
    return {
      name: argument,
      optional: facts.optional,
      text,
      ...known(facts),
      ...(many && { many }),
      ...(example && { example }),
      ...(rows && { settings: rows.map(settingEntry) }),
    };
  });
}

/** What the first example that answers gives for an argument, as a person would type it. */
function exampleOf(examples: Example[], at: number): string {
  const answered = examples.filter(({ result }) => !result.startsWith("#"));
  const piece = answered.map(({ formula }) => argumentPieces(formula)[at] ?? "").find((given) => given !== "") ?? "";
  return String(literal(piece) ?? piece);
}

/** The first of the examples that a message offers: `12 or 12%` is 12. */
function firstOf(reads = ""): string {
  return reads.split(/, | or /)[0]!;
}

/** The sentence before each declaration of a function's arguments, by the keys that lead to it: `boards.widthIn`. */
function sentencesOf(path: string, name: string): Map<string, string> {
  const found = declaredIn(path, name);
  const sentences = new Map<string, string>();
  const call = found && initializerOf(found.statement, name);
  const first = call && ts.isCallExpression(call) ? call.arguments[0] : undefined;
  if (first) gather(first, path, "", sentences);
  return sentences;
}

/** Walks an object of declarations: its properties, what it takes over from another, what a declaration is made of. */
function gather(node: ts.Expression, path: string, before: string, sentences: Map<string, string>): void {
  if (ts.isIdentifier(node)) {
    const found = declaredIn(path, node.text);
    const object = found && initializerOf(found.statement, found.name);
    if (object) gather(object, found.path, before, sentences);
  } else if (ts.isObjectLiteralExpression(node)) {
    for (const property of node.properties) {
      if (ts.isSpreadAssignment(property)) gather(property.expression, path, before, sentences);
      if (!ts.isPropertyAssignment(property)) continue;
      const place = before + property.name.getText();
      const comment = commentOf(property, property.getSourceFile());
      if (comment) sentences.set(place, comment.summary);
      gatherWithin(property.initializer, path, `${place}.`, sentences);
    }
  }
}

/** `optional(rows({ … }), [])`: the parts stand in an object somewhere among the arguments of the calls. */
function gatherWithin(node: ts.Expression, path: string, before: string, sentences: Map<string, string>): void {
  if (!ts.isCallExpression(node)) return;
  for (const argument of node.arguments) {
    if (ts.isObjectLiteralExpression(argument)) gather(argument, path, before, sentences);
    else gatherWithin(argument, path, before, sentences);
  }
}

function initializerOf(statement: ts.Statement, name: string): ts.Expression | undefined {
  if (!ts.isVariableStatement(statement)) return undefined;
  return statement.declarationList.declarations.find((one) => one.name.getText() === name)?.initializer;
}
