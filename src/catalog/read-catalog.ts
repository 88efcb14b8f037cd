import { readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import ts from "typescript";
import { registry } from "../functions/registry";
import { paramsOf } from "./comments/arguments";
import { commentOf, type Comment } from "./comments/comment";
import { TOPICS, type Entry } from "./entry";
import { formulasBehind } from "./comments/formulas";
import { gradeOf } from "./comments/grade";

/** The project's folder, seen from this file. */
export const ROOT = resolve(import.meta.dirname, "../..");

/** The catalog: every worksheet function, read from the comments of src/functions and src/math. */
export function readCatalog(): Entry[] {
  return Object.keys(TOPICS).flatMap((topic) => functionFiles(topic).flatMap((path) => entriesIn(path, topic)));
}

/** The files that a topic's worksheet functions stand in, in the order in which its index.ts names them. */
function functionFiles(topic: string): string[] {
  const folder = join(ROOT, "src/functions", topic);
  return parsed(join(folder, "index.ts"))
    .statements.filter(ts.isExportDeclaration)
    .map(({ moduleSpecifier }) => join(folder, `${(moduleSpecifier as ts.StringLiteral).text}.ts`));
}

function entriesIn(path: string, topic: string): Entry[] {
  const file = parsed(path);
  return file.statements.filter(ts.isVariableStatement).flatMap((statement) => {
    const comment = commentOf(statement, file);
    const name = comment?.tags.get("customfunction")?.[0];
    return comment && name ? [entryOf(name, topic, path, comment)] : [];
  });
}

function entryOf(name: string, topic: string, path: string, comment: Comment): Entry {
  const texts = (tag: string) => comment.tags.get(tag) ?? [];
  const formulas = formulasBehind(path, name);
  const examples = texts("example").map(exampleOf);
  return {
    name,
    topic,
    summary: comment.summary,
    remarks: comment.remarks,
    params: paramsOf(registry[name]!.takes, path, name, examples),
    returns: (texts("returns")[0] ?? "").replace(/^\{[^}]*\}\s*/, ""),
    examples,
    cautions: texts("caution"),
    see: texts("see").flatMap((see) => see.split(/,\s*/)),
    pictures: texts("picture").flatMap((pictures) => pictures.split(/,\s*/)),
    words: texts("words").flatMap((words) => words.split(/,\s*/)),
    formulas,
    grade: gradeOf(formulas.flatMap(({ sources }) => sources)),
  };
}

function exampleOf(text: string) {
  const at = text.lastIndexOf(" gives ");
  return { formula: text.slice(0, at), result: text.slice(at + " gives ".length) };
}

function parsed(path: string): ts.SourceFile {
  return ts.createSourceFile(path, readFileSync(path, "utf8"), ts.ScriptTarget.Latest, true);
}
