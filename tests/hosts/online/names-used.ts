import ts from "typescript";

/** Every name that a script uses as a value and declares nowhere: what it expects of its surroundings. */
export function namesFromOutside(script: string): string[] {
  const [declared, used] = [new Set<string>(), new Set<string>()];
  eachNode(script, (node) => {
    if (ts.isIdentifier(node)) (isDeclaredHere(node) ? declared : isValue(node) ? used : undefined)?.add(node.text);
  });
  return [...used].filter((name) => !declared.has(name)).sort();
}

const SINCE_2019 = [
  ts.SyntaxKind.QuestionDotToken,
  ts.SyntaxKind.QuestionQuestionToken,
  ts.SyntaxKind.QuestionQuestionEqualsToken,
  ts.SyntaxKind.BarBarEqualsToken,
  ts.SyntaxKind.AmpersandAmpersandEqualsToken,
  ts.SyntaxKind.PropertyDeclaration,
];

/** How often a script is written in a way that the language did not have in 2019; whole numbers of any length do not count. */
export function youngerThan2019(script: string): number {
  let count = 0;
  eachNode(script, ({ kind }) => void (count += SINCE_2019.includes(kind) ? 1 : 0));
  return count;
}

function eachNode(script: string, look: (node: ts.Node) => void): void {
  const visit = (node: ts.Node): void => {
    look(node);
    ts.forEachChild(node, visit);
  };
  visit(ts.createSourceFile("script.js", script, ts.ScriptTarget.Latest, true, ts.ScriptKind.JS));
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
