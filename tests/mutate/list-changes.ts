import ts from 'typescript';

/** A small change to a file that a test of the file should notice. */
export interface Change {
  readonly kind: 'comparison' | 'condition' | 'constant' | 'return';
  readonly start: number;
  readonly end: number;
  readonly becomes: string;
}

const COMPARISONS: Readonly<Partial<Record<ts.SyntaxKind, string>>> = {
  [ts.SyntaxKind.LessThanToken]: '<=',
  [ts.SyntaxKind.LessThanEqualsToken]: '<',
  [ts.SyntaxKind.GreaterThanToken]: '>=',
  [ts.SyntaxKind.GreaterThanEqualsToken]: '>',
  [ts.SyntaxKind.EqualsEqualsEqualsToken]: '!==',
  [ts.SyntaxKind.ExclamationEqualsEqualsToken]: '===',
};

/**
 * Returns every small change of a file: a comparison changed, a condition dropped, a constant changed, or the two
 * values of a choice swapped.
 */
export function listChanges(path: string, text: string): Change[] {
  const kind = path.endsWith('x') ? ts.ScriptKind.TSX : ts.ScriptKind.TS;
  const file = ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true, kind);
  const found: Change[] = [];
  const add = (kind: Change['kind'], node: ts.Node, becomes: string): void => {
    found.push({ kind, start: node.getStart(), end: node.getEnd(), becomes });
  };
  const visit = (node: ts.Node): void => {
    // Skips types, which are gone when the code runs, and thrown messages, which are for people.
    if (ts.isTypeNode(node) || ts.isImportDeclaration(node) || ts.isThrowStatement(node)) return;
    if (ts.isBinaryExpression(node)) {
      const { left, right, operatorToken } = node;
      const turned = COMPARISONS[operatorToken.kind];
      if (turned) add('comparison', operatorToken, turned);
      const isJoint =
        operatorToken.kind === ts.SyntaxKind.AmpersandAmpersandToken ||
        operatorToken.kind === ts.SyntaxKind.BarBarToken;
      // The half that only proves a type to the compiler would make the other half throw.
      if (isJoint) add('condition', node, right.getText());
      if (isJoint) add('condition', node, left.getText());
    } else if (ts.isConditionalExpression(node)) {
      const { condition, whenTrue, whenFalse } = node;
      add('return', node, `${condition.getText()} ? ${whenFalse.getText()} : ${whenTrue.getText()}`);
    } else if (ts.isIfStatement(node)) {
      add('condition', node.expression, `!(${node.expression.getText()})`);
    } else if (ts.isReturnStatement(node) || (ts.isArrowFunction(node) && !ts.isBlock(node.body))) {
      const value = ts.isReturnStatement(node) ? node.expression : (node as ts.ArrowFunction).body;
      if (value && isTruth(value)) add('return', value, `!(${value.getText()})`);
    } else if (ts.isNumericLiteral(node)) {
      add('constant', node, String(Number(node.text) + 1));
    } else if (node.kind === ts.SyntaxKind.TrueKeyword || node.kind === ts.SyntaxKind.FalseKeyword) {
      add('constant', node, node.kind === ts.SyntaxKind.TrueKeyword ? 'false' : 'true');
    }
    ts.forEachChild(node, visit);
  };
  visit(file);
  return found;
}

/** Returns whether an expression is clearly true or false, so that its opposite has the same type. */
function isTruth(node: ts.Node): boolean {
  if (ts.isPrefixUnaryExpression(node)) return node.operator === ts.SyntaxKind.ExclamationToken;
  return (
    ts.isCallExpression(node) &&
    /\.(?:some|every|has|includes|test|startsWith|endsWith)$/.test(node.expression.getText())
  );
}
