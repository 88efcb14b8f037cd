import ts from "typescript";
import { commentOf } from "./comment";
import type { Formula } from "../entry";
import { gradeOf } from "./grade";
import { moduleAt } from "./modules";

/**
 * The formulas that a declaration rests on: every function of src/math with an `@formula` line that its code names,
 * directly or through other functions. The one that it names most directly, which is its own, stands first.
 */
export function formulasBehind(path: string, name: string): Formula[] {
  const found = behind(path, name, 0, new Set());
  const least = Math.min(...found.map(({ depth }) => depth));
  const own = found.filter(({ depth }) => depth === least).slice(0, 1);
  return [...own, ...found.filter((one) => one !== own[0])].map(({ formula }) => formula);
}

/** A formula, and over how many other names it was found. */
interface Found {
  formula: Formula;
  depth: number;
}

function behind(path: string, name: string, depth: number, seen: Set<string>): Found[] {
  if (seen.has(`${path}:${name}`)) return [];
  seen.add(`${path}:${name}`);
  const module = moduleAt(path);
  const statement = module.declared.get(name);
  if (!statement) return module.passedOn.flatMap((other) => behind(other, name, depth, seen));
  const own = formulaOf(statement, name, module.file);
  const named = [...namesIn(statement)].flatMap((used) => {
    const from = module.imported.get(used);
    if (from) return /\/(?:math|functions)\//.test(from.path) ? behind(from.path, from.name, depth + 1, seen) : [];
    return module.declared.has(used) ? behind(path, used, depth + 1, seen) : [];
  });
  return own ? [{ formula: own, depth }, ...named] : named;
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
