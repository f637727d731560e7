import { parseAst } from 'vite';
import { expect, test } from 'vitest';
import { withLatePatterns } from './make-patterns-late.ts';

const late = (code: string): string => withLatePatterns(code, parseAst(code) as never).toString();

test('a constant with a class of letters becomes a variable that is set when it is first read', () => {
  expect(late(String.raw`const WORD = /\p{L}+/u; export const reads = (text) => WORD.test(text);`)).toBe(
    String.raw`let WORD; export const reads = (text) => (WORD ??= new RegExp("\\p{L}+", "u")).test(text);`,
  );
});

test('a pattern with a class of letters inside a function is kept for the next call', () => {
  expect(late(String.raw`export function opens(text) { return /^\p{Lu}/u.test(text); }`)).toBe(
    `let late$0;\nexport function opens(text) { return (late$0 ??= new RegExp("^\\\\p{Lu}", "u")).test(text); }`,
  );
});

test('patterns that keep their place, patterns without letters and exported patterns stay as they are', () => {
  for (const code of [
    String.raw`export const count = (text) => { const word = /\p{L}+/gu; return word.exec(text); };`,
    'const DIGIT = /[0-9]/; export const has = (text) => DIGIT.test(text);',
    String.raw`export const WORD = /\p{L}+/u;`,
  ])
    expect(late(code)).toBe(code);
});

test('a property with the name of a constant is no use of the constant', () => {
  expect(late(String.raw`const WORD = /\p{L}/u; export const name = { WORD: kinds.WORD };`)).toBe(
    'let WORD; export const name = { WORD: kinds.WORD };',
  );
});

test('a late pattern finds what its source finds', () => {
  const code = String.raw`const WORD = /[\p{L}’/\\"-]+/gu; const find = (text) => [text.match(WORD), /^\p{Lu}/u.test(text)];`;
  const run = (given: string) => new Function(`${given}; return (text) => [find(text), find(text)];`)();
  for (const text of ['The quay’s gate', 'über "dock/pier"', '42'])
    expect(run(late(code))(text)).toEqual(run(code)(text));
});
