import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { compileGroup, createJudge, parseGroup, tokenize, vet } from '../src/analyze/index.ts';
import type { Report } from '../src/analyze/types.ts';
import { loadAnalyzer } from './load-analyzer.ts';

/** A passage judged by hand for one group. */
interface PassageGold {
  readonly title: string;
  readonly text: string;
  /** The content of a group file. */
  readonly group: unknown;
  /** Each word that is beyond, with every pattern that the word needs and the group lacks. */
  readonly beyond: Readonly<Record<string, readonly string[]>>;
  /** Words on which teachers differ, with the reason. */
  readonly mayDiffer: Readonly<Record<string, string>>;
}

const folder = new URL('passages/', import.meta.url);
const passages = readdirSync(folder)
  .filter((file) => file.endsWith('.json'))
  .map((file) => JSON.parse(readFileSync(new URL(file, folder), 'utf8')) as PassageGold);
const analyzer = loadAnalyzer();

describe.each(passages)('$title', ({ text, group, beyond, mayDiffer }) => {
  const report = vetText(text, group);
  const found = report.words.filter(({ standing }) => standing === 'beyond');

  test('exactly the words that the judges call not decodable are beyond', () => {
    const settled = found.map(({ word }) => word).filter((word) => !(word in mayDiffer));
    expect(settled.toSorted()).toEqual(Object.keys(beyond).toSorted());
  });

  test('no word is unsure', () => {
    expect(report.words.filter(({ standing }) => standing === 'unsure')).toEqual([]);
  });

  test('each word that is beyond lacks the patterns the judges listed', () => {
    const missing = Object.fromEntries(
      found.filter(({ word }) => word in beyond).map(({ word, missing }) => [word, [...missing].toSorted()]),
    );
    expect(missing).toEqual(beyond);
  });
});

// Outside check: the first passage was annotated outside this repository, and our copy must agree with the original.
const original = new URL('../../shared/gold/passage_example.json', import.meta.url);

test.skipIf(!existsSync(original))('our copy of the example has the text and words of the original', () => {
  const { passages: originals } = JSON.parse(readFileSync(original, 'utf8'));
  const [{ title, text, gold }] = originals;
  const ours = passages.find((passage) => passage.title === title);
  expect(ours?.text).toBe(text);
  expect(Object.keys(ours!.beyond)).toEqual(gold[0].not_decodable.map(({ word }: { word: string }) => word));
  expect(Object.keys(ours!.mayDiffer)).toEqual(gold[0].may_differ.map(({ word }: { word: string }) => word));
});

function vetText(text: string, groupFile: unknown): Report {
  const tokens = tokenize(text);
  const words = tokens.filter(({ kind }) => kind === 'word').map(({ key }) => [key, 1] as const);
  const judge = createJudge(analyzer, compileGroup(parseGroup(groupFile), null));
  return vet({ words, skipped: tokens.length - words.length }, judge);
}
