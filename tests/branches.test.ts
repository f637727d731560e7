import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { globSync } from 'tinyglobby';
import ts from 'typescript';
import { expect, test } from 'vitest';

/**
 * The most branches of a function. A function with more should move its cases to an ordered list of rules, or a part of
 * itself to its own function.
 */
const MOST = 15;

/**
 * Functions with more branches, and the most each may have. No function may be added. Whoever fixes a function removes
 * its line.
 */
const KNOWN: Readonly<Record<string, number>> = {
  'src/analyze/sequence-import/cut-clauses.ts dividers': 23,
  'src/analyze/sequence-import/example-rules.ts applies': 30,
  'src/analyze/sequence-import/notation-changes.ts changeOfBase': 24,
  'src/analyze/sequence-import/notation-changes.ts possessiveKinds': 27,
  'src/analyze/sequence-import/notation-families.ts familyWith': 24,
  'src/analyze/sequence-import/notation-families.ts listedTypes': 18,
  'src/analyze/sequence-import/notation-lists.ts everySound': 30,
  'src/analyze/sequence-import/notation-lists.ts voicedTh': 37,
  'src/analyze/sequence-import/notation-shorthand.ts openWords': 16,
  'src/analyze/sequence-import/notation-sounds.ts longClosed': 18,
  'src/analyze/sequence-import/notation-word-parts.ts contractionKinds': 19,
  'src/analyze/sequence-import/notation-word-parts.ts rimeList': 20,
  'src/analyze/sequence-import/notation-word-parts.ts rootsByName': 34,
  'src/analyze/sequence-import/read-items.ts chunkItem': 23,
  'src/analyze/sequence-import/chunk-meaning.ts ofPhrases': 25,
  'src/analyze/sequence-import/read-list.ts ': 21,
  'src/analyze/sequence-import/read-sign.ts readSign': 24,
  'src/analyze/sequence-import/read-table.ts readTable': 25,
  'src/analyze/sequence-import/settle-announcement.ts settleAnnouncement': 17,
  'src/analyze/sequence-import/settle-headings.ts countsSteps': 18,
  'src/analyze/sequence-import/spellings.ts findSpelling': 28,
  'src/analyze/sequence-import/split-lexemes.ts joinSyllables': 19,
  'src/analyze/sequence-import/split-lexemes.ts splitLexemes': 33,
  'src/analyze/sequence-import/split-lexemes.ts splitWord': 21,
  'src/analyze/sequence-import/step-heading.ts readStepHeading': 21,
  'src/analyze/sequence-import/word-rules.ts applies': 18,
};

const STATEMENTS = new Set([
  ts.SyntaxKind.IfStatement,
  ts.SyntaxKind.ConditionalExpression,
  ts.SyntaxKind.CaseClause,
  ts.SyntaxKind.ForStatement,
  ts.SyntaxKind.ForInStatement,
  ts.SyntaxKind.ForOfStatement,
  ts.SyntaxKind.WhileStatement,
  ts.SyntaxKind.DoStatement,
  ts.SyntaxKind.CatchClause,
]);
const OPERATORS = new Set([
  ts.SyntaxKind.AmpersandAmpersandToken,
  ts.SyntaxKind.BarBarToken,
  ts.SyntaxKind.QuestionQuestionToken,
]);

const root = fileURLToPath(new URL('..', import.meta.url));
// Views (.tsx files) are not checked, since they are trees of elements with conditions.
const files = globSync(['src/**/*.ts', 'entrypoints/**/*.ts'], {
  cwd: root,
  ignore: ['**/*.test.ts'],
});
const above = new Map<string, number>();
for (const file of files.sort()) {
  for (const [name, count] of branchesIn(readFileSync(root + file, 'utf8')))
    if (count > MOST) above.set(`${file} ${name}`, Math.max(count, above.get(`${file} ${name}`) ?? 0));
}

test(`no function has more than ${MOST} branches, except the known ones`, () => {
  expect(files.length).toBeGreaterThan(300);
  expect([...above].filter(([name, count]) => count > (KNOWN[name] ?? 0))).toEqual([]);
});

test('every known function still has more branches than allowed', () => {
  expect(Object.keys(KNOWN).filter((name) => !above.has(name))).toEqual([]);
});

test('if, ?:, case, loops, catch, &&, || and ?? count as branches of the function that contains them', () => {
  const source = `function one(a) { if (a && a.b) return a ? 1 : 2; for (const c of a) c ?? 3; [].map((d) => d || 4); }
    const two = { three: () => { switch (5) { case 5: try {} catch {} } } };`;
  expect([...branchesIn(source)]).toEqual([
    ['one', 5],
    ['', 1],
    ['three', 2],
  ]);
});

/**
 * Yields the functions of a source by name, with their number of branches. A function without a name has the name of
 * the property or variable it is assigned to.
 */
function* branchesIn(source: string): Generator<[string, number]> {
  const file = ts.createSourceFile('a.ts', source, ts.ScriptTarget.Latest, true);
  const open: ts.Node[] = [file];
  for (let node = open.pop(); node; node = open.pop()) {
    if (ts.isFunctionLike(node) && 'body' in node && node.body) yield [nameOf(node), countBranches(node)];
    const children: ts.Node[] = [];
    node.forEachChild((child) => void children.push(child));
    open.push(...children.reverse());
  }
}

function nameOf(node: ts.SignatureDeclaration): string {
  const { name, parent } = node;
  if (name) return name.getText();
  return ts.isVariableDeclaration(parent) || ts.isPropertyAssignment(parent) ? parent.name.getText() : '';
}

function countBranches(node: ts.Node): number {
  let count = 0;
  node.forEachChild((child) => {
    if (ts.isFunctionLike(child)) return;
    if (STATEMENTS.has(child.kind)) count++;
    if (ts.isBinaryExpression(child) && OPERATORS.has(child.operatorToken.kind)) count++;
    count += countBranches(child);
  });
  return count;
}
