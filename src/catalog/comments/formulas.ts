import ts from "typescript";
import { commentOf } from "./comment";
import type { Formula } from "../entry";
import { gradeOf } from "./grade";
import { moduleAt } from "./modules";

/**
 * The formulas that a declaration rests on: every function of src/math with an `@formula` line that its code names,
 * directly or through other functions.
 */
export function formulasBehind(path: string, name: string, seen = new Set<string>()): Formula[] {
  if (seen.has(`${path}:${name}`)) return [];
  seen.add(`${path}:${name}`);
  const module = moduleAt(path);
  const statement = module.declared.get(name);
  if (!statement) return module.passedOn.flatMap((other) => formulasBehind(other, name, seen));
  const own = formulaOf(statement, name, module.file);
  const named = [...namesIn(statement)].flatMap((used) => {
    const from = module.imported.get(used);
    if (from) return /\/(?:math|functions)\//.test(from.path) ? formulasBehind(from.path, from.name, seen) : [];
    return module.declared.has(used) ? formulasBehind(path, used, seen) : [];
  });
  return own ? [own, ...named] : named;
}

function formulaOf(statement: ts.Statement, name: string, file: ts.SourceFile): Formula | undefined {
  const comment = commentOf(statement, file);
  const formula = comment?.tags.get("formula");
  if (!comment || !formula) return undefined;
  const sources = comment.tags.get("source") ?? [];
  return {
    name,
    sentence: comment.summary,
    formula: formula.join("; "),
    sources,
    range: (comment.tags.get("range") ?? []).join("; "),
    checked: (comment.tags.get("checked") ?? []).join("; "),
    grade: gradeOf(sources),
  };
}

/** The names a declaration uses that are not its own: neither its parameters and variables nor names of properties. */
function namesIn(statement: ts.Statement): Set<string> {
  const used = new Set<string>();
  const own = new Set<string>();
  const visit = (node: ts.Node): void => {
    if (ts.isBindingElement(node) || ts.isParameter(node)) own.add(node.name.getText());
    if (ts.isIdentifier(node) && !namesAProperty(node)) used.add(node.text);
    ts.forEachChild(node, visit);
  };
  visit(statement);
  return new Set([...used].filter((name) => !own.has(name)));
}

function namesAProperty(node: ts.Identifier): boolean {
  const { parent } = node;
  return (ts.isPropertyAccessExpression(parent) || ts.isPropertyAssignment(parent)) && parent.name === node;
}
