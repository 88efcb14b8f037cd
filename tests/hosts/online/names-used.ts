import ts from "typescript";

/** Every name that a script uses as a value and declares nowhere: what it expects of its surroundings. */
export function namesFromOutside(script: string): string[] {
  const tree = ts.createSourceFile("script.js", script, ts.ScriptTarget.Latest, true, ts.ScriptKind.JS);
  const [declared, used] = [new Set<string>(), new Set<string>()];
  const visit = (node: ts.Node): void => {
    if (ts.isIdentifier(node)) (isDeclaredHere(node) ? declared : isValue(node) ? used : undefined)?.add(node.text);
    ts.forEachChild(node, visit);
  };
  visit(tree);
  return [...used].filter((name) => !declared.has(name)).sort();
}

function isDeclaredHere(name: ts.Identifier): boolean {
  const { parent } = name;
  const declares =
    ts.isVariableDeclaration(parent) ||
    ts.isParameter(parent) ||
    ts.isBindingElement(parent) ||
    ts.isFunctionDeclaration(parent) ||
    ts.isFunctionExpression(parent) ||
    ts.isClassDeclaration(parent);
  return declares && parent.name === name;
}

/** Not the name behind a dot, nor a key of an object. */
function isValue(name: ts.Identifier): boolean {
  const { parent } = name;
  if (ts.isPropertyAccessExpression(parent)) return parent.expression === name;
  if (ts.isPropertyAssignment(parent)) return parent.initializer === name;
  if (ts.isBindingElement(parent)) return parent.propertyName !== name;
  return !ts.isMethodDeclaration(parent) && !ts.isPropertyDeclaration(parent) && !ts.isLabeledStatement(parent);
}
