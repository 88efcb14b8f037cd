import { existsSync, readFileSync } from "node:fs";
import { dirname, resolve } from "node:path";
import ts from "typescript";

/** A source file read once: what it declares, and where its imported names come from. */
export interface Module {
  file: ts.SourceFile;
  declared: Map<string, ts.Statement>;
  imported: Map<string, { path: string; name: string }>;
  passedOn: string[];
}

const modules = new Map<string, Module>();

/** Where a name that a file uses is declared: there, or in the file that it is imported from. */
export function declaredIn(
  path: string,
  name: string,
): { statement: ts.Statement; path: string; name: string } | undefined {
  const module = moduleAt(path);
  const statement = module.declared.get(name);
  if (statement) return { statement, path, name };
  const from = module.imported.get(name);
  return from && declaredIn(from.path, from.name);
}

/** A source file, read once. */
export function moduleAt(path: string): Module {
  let module = modules.get(path);
  if (!module) modules.set(path, (module = readModule(path)));
  return module;
}

function readModule(path: string): Module {
  const file = ts.createSourceFile(path, readFileSync(path, "utf8"), ts.ScriptTarget.Latest, true);
  const module: Module = { file, declared: new Map(), imported: new Map(), passedOn: [] };
  for (const statement of file.statements) {
    if (ts.isImportDeclaration(statement)) addImports(statement, path, module);
    else if (ts.isExportDeclaration(statement)) addPassedOn(statement, path, module);
    else if (ts.isVariableStatement(statement))
      for (const { name } of statement.declarationList.declarations) module.declared.set(name.getText(file), statement);
    else if (ts.isFunctionDeclaration(statement) && statement.name) module.declared.set(statement.name.text, statement);
  }
  return module;
}

function addImports(statement: ts.ImportDeclaration, path: string, module: Module): void {
  const from = fileOf(path, statement.moduleSpecifier);
  const names = statement.importClause?.namedBindings;
  if (!from || !names || !ts.isNamedImports(names)) return;
  for (const { name, propertyName } of names.elements)
    module.imported.set(name.text, { path: from, name: (propertyName ?? name).text });
}

function addPassedOn(statement: ts.ExportDeclaration, path: string, module: Module): void {
  const from = statement.moduleSpecifier && fileOf(path, statement.moduleSpecifier);
  if (from) module.passedOn.push(from);
}

function fileOf(path: string, specifier: ts.Expression): string | undefined {
  if (!ts.isStringLiteral(specifier) || !specifier.text.startsWith(".")) return undefined;
  const base = resolve(dirname(path), specifier.text);
  return [`${base}.ts`, `${base}/index.ts`].find(existsSync);
}
