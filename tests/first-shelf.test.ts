import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import {
  compileGroup,
  createJudge,
  parseSequence,
  settleCounts,
  tokenize,
  vet,
} from '../src/analyze/index.ts';
import type { Report, WordKey } from '../src/analyze/types.ts';
import { readUnfitWords } from '../src/data/read-unfit-words.ts';
import { type FirstText, firstTexts, KINDS } from '../src/pages/shelf/first-texts.ts';
import { inVariety } from '../src/variety/index.ts';
import { groupOf } from './fakes/group.ts';
import { loadAnalyzer } from './load-analyzer.ts';

const STARTERS = ['steady-steps', 'second-tide', 'england-2013'];
const TOWN = ['Ines', 'Otto', 'Bram', 'Wilma', 'Falk', 'Tarn', 'Quay', 'Marigold'];
const sequences = new Map(
  STARTERS.map((id) => [
    id,
    parseSequence(
      JSON.parse(readFileSync(new URL(`../profiles/sequences/${id}.json`, import.meta.url), 'utf8')),
    ),
  ]),
);

/**
 * Returns the report on a text for a group at the text's step that knows the given names. The text is converted to the
 * English of its starter sequence.
 */
function report({ starter, step, text }: FirstText, names: readonly string[]): Report {
  const words = new Map<WordKey, number>();
  const sequence = sequences.get(starter)!;
  const { accent = 'american' } = sequence;
  for (const line of inVariety(text, accent).split('\n'))
    for (const { kind, key } of tokenize(line))
      if (kind === 'word') words.set(key, (words.get(key) ?? 0) + 1);
  const group = compileGroup(groupOf({ sequence: starter, step, names: [...names] }), sequence);
  return vet({ words: settleCounts(words), skipped: 0 }, createJudge(loadAnalyzer(), group));
}

test('the first shelf has 48 texts, each with its own title', () => {
  expect(firstTexts).toHaveLength(48);
  expect(new Set(firstTexts.map(({ title }) => title.toLowerCase())).size).toBe(48);
});

test('the first shelf has every kind of text, and at most one text for each step', () => {
  expect(new Set(firstTexts.map(({ kind }) => kind))).toEqual(new Set(KINDS));
  expect(new Set(firstTexts.map(({ starter, step }) => `${starter} ${step}`)).size).toBe(48);
});

test.each(STARTERS)('%s has at least twelve texts, some in each half of its steps', (id) => {
  const steps = firstTexts.filter(({ starter }) => starter === id).map(({ step }) => step);
  const { length } = sequences.get(id)!.steps;
  expect(steps.length).toBeGreaterThanOrEqual(12);
  expect(steps.filter((step) => step <= length / 2).length).toBeGreaterThanOrEqual(3);
  expect(steps.filter((step) => step > length / 2).length).toBeGreaterThanOrEqual(2);
});

describe.each(firstTexts.map((text) => [text.name, text] as const))('%s', (_name, text) => {
  test('has 60 to 220 words and a reach of at least 98% at its step, with or without known names', () => {
    for (const names of [TOWN, []]) {
      const { tally, words } = report(text, names);
      const beyond = words.filter(({ standing }) => standing === 'beyond' || standing === 'unsure');
      expect(tally.reach, beyond.map(({ word }) => word).join(' ')).toBeGreaterThanOrEqual(98);
      expect(tally.running + tally.names).toBeGreaterThanOrEqual(60);
      expect(tally.running + tally.names).toBeLessThanOrEqual(220);
    }
  });

  test('practises its step in at least eight words, not counting names', () => {
    const fresh = report(text, TOWN).words.filter(({ standing }) => standing === 'fresh');
    expect(fresh.length).toBeGreaterThanOrEqual(8);
  });
});

// Outside sources: npm naughty-words and profane-words. Harmless words that the texts use may be listed in `plain`.
test('no text of the first shelf contains a coarse word', () => {
  const plain = new Set<string>();
  const unfit = readUnfitWords();
  const found = firstTexts.flatMap(({ title, text }) =>
    `${title} ${text}`
      .toLowerCase()
      .split(/[^a-z']+/)
      .filter((word) => unfit.has(word) && !plain.has(word)),
  );
  expect([...new Set(found)]).toEqual([]);
});
