import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { Accent } from '../../src/analyze/types.ts';
import clues from '../../src/lesson/homophones/clues.json' with { type: 'json' };
import { findHomophones } from '../../src/lesson/homophones/find-homophones.ts';
import { homophones } from '../../src/lesson/homophones/homophones.ts';
import { checkOddInputs, inputAt, makeOf, storm } from './check-sheet.ts';
import { lessonInput } from './load-lesson.ts';

const last = inputAt('steady-steps', 60);
const setsIn = (accent: Accent): string[][] =>
  findHomophones(lessonInput('steady-steps', 60, { bySight: Object.keys(clues.clues), accent })).map(
    ({ words }) => words.map(({ word }) => word),
  );
const sets = setsIn('american');
const british = setsIn('british');
const alike = (...words: string[]) => sets.some((set) => words.every((word) => set.includes(word)));
const alikeInBritish = (...words: string[]) =>
  british.some((set) => words.every((word) => set.includes(word)));

test('the homophone part is made for any group and any passage', () => checkOddInputs(homophones));

describe('homophones of years 2 to 4 in England’s national curriculum 2013, English Appendix 1 (from memory)', () => {
  const listed = `there their they're | here hear | see sea | bare bear | one won | sun son | to too two | be bee | blue blew |
    night knight | ball bawl | berry bury | brake break | fair fare | grate great | groan grown | heel heal he'll |
    knot not | mail male | main mane | meat meet | medal meddle | missed mist | peace piece | plain plane |
    rain rein reign | scene seen | weather whether | whose who's`;
  test.each(listed.split('|').map((set) => set.trim().split(' ')))('%s and %s are in one set', (...words) => {
    expect(alike(...words)).toBe(true);
  });

  // The appendix lists these words as near-homophones. They are not pronounced alike, so a task cannot ask pupils to
  // tell them apart by meaning alone.
  test.each([
    ['quite', 'quiet'],
    ['accept', 'except'],
    ['affect', 'effect'],
  ])('%s and %s are not in one set', (one, other) => expect(alike(one, other)).toBe(false));

  const file = new URL('../../../shared/data/england_nc_appendix1.tsv', import.meta.url);
  test.skipIf(!existsSync(file))(
    'every word of the year 2 list in the shared data file is in a set, except quite and quiet',
    () => {
      const words = readFileSync(file, 'utf8')
        .split('\n')
        .map((line) => line.split('\t'))
        .filter(([, , pattern, , kind]) => pattern?.includes('homophones') && kind === 'example')
        .map(([, , , word]) => word!);
      expect(words.length).toBeGreaterThan(20);
      const taught = new Set(sets.flat());
      expect(words.filter((word) => !taught.has(word))).toEqual(['quite', 'quiet']);
    },
  );
});

test.each([
  ['caught', 'cot'],
  ['fairy', 'ferry'],
  ['colour', 'color'],
  ['honour', 'honor'],
  ['been', 'bin'],
  ['do', 'due'],
])(
  '%s and %s are not in one set, being alike in some accents only or one word with two spellings',
  (one, other) => {
    expect(alike(one, other)).toBe(false);
  },
);

// Homophones in Southern British English. Source: Wells, Accents of English (1982), on the loss of r and the merger of
// saw and sore; from memory.
test.each([
  ['caught', 'court'],
  ['saw', 'sore'],
  ['stalk', 'stork'],
  ['sauce', 'source'],
  ['floor', 'flaw'],
  ['father', 'farther'],
  ['cheque', 'check'],
  ['draught', 'draft'],
])('%s and %s are homophones in British English only', (one, other) => {
  expect(alikeInBritish(one, other)).toBe(true);
  expect(alike(one, other)).toBe(false);
});

test.each([
  ['flour', 'flower'],
  ['their', 'there'],
  ['which', 'witch'],
])('%s and %s are homophones in both accents', (one, other) => {
  expect(alikeInBritish(one, other)).toBe(true);
  expect(alike(one, other)).toBe(true);
});

test.each([
  ['ant', 'aunt'],
  ['ate', 'eight'],
])('%s and %s are homophones in American English only', (one, other) => {
  expect(alikeInBritish(one, other)).toBe(false);
  expect(alike(one, other)).toBe(true);
});

test('there are hundreds of homophone sets, and each word has a clue that does not contain it', () => {
  expect(sets.length).toBeGreaterThan(230);
  expect(british.length).toBeGreaterThan(230);
  expect([...new Set([...sets, ...british].flat())].toSorted()).toEqual(Object.keys(clues.clues).toSorted());
  for (const [word, clue] of Object.entries(clues.clues)) {
    expect(clue.length, word).toBeLessThanOrEqual(60);
    const set = [...sets, ...british].filter((words) => words.includes(word)).flat();
    const said = new Set(clue.toLowerCase().match(/[a-z']+/g));
    if (clue.length > 12)
      expect(
        set.filter((each) => said.has(each) && each.length > 3),
        word,
      ).toEqual([]);
  }
});

test('no word with a clue is on the list of words kept out of lessons', () => {
  const file = new URL('../../src/data/source/not-in-lessons.txt', import.meta.url);
  const lines = readFileSync(file, 'utf8').split('\n');
  const out = new Set(lines.filter((line) => !line.startsWith('#')).flatMap((line) => line.split(' ')));
  expect(Object.keys(clues.clues).filter((word) => out.has(word))).toEqual([]);
});

test('passage words come first, untaught words are only on the key, and each task asks for one word of a set', () => {
  const { blocks } = makeOf(homophones, { ...last, passage: storm }, 3, { count: '4' });
  const asked = new Set(blocks[0]!.rows.map(([, word]) => word));
  const found = findHomophones({ ...last, passage: storm });
  const first = found.filter(
    ({ inPassage, words }) => inPassage.length > 0 && words.filter((w) => w.known).length > 1,
  );
  expect(first.length).toBeGreaterThan(4);
  const isMet = found.map(({ inPassage }) => inPassage.length > 0);
  expect(isMet).toEqual(isMet.toSorted((a, b) => Number(b) - Number(a)));
  for (const word of asked) expect(first.some(({ words }) => words.some((w) => w.word === word))).toBe(true);
  expect(blocks[0]!.note).toContain('In the passage:');

  const early = lessonInput('steady-steps', 1, { bySight: ['see', 'sea', 'to', 'two'] });
  const rows = makeOf(homophones, early, 1).blocks[0]!.rows;
  expect(rows).toHaveLength(2);
  const everAsked = [1, 2, 3, 4, 5, 6].flatMap((seed) =>
    makeOf(homophones, early, seed).blocks[0]!.rows.map(([, word]) => word),
  );
  expect([...new Set(everAsked)].toSorted()).toEqual(['sea', 'see', 'to', 'two']);
  for (const [shown, word, , others] of rows) {
    const pair = /^s/.test(word!) ? ['sea', 'see'] : ['to', 'two'];
    expect(shown!.split(/\u00a0+/).toSorted()).toEqual(pair);
    expect(others!.endsWith('not yet taught: too')).toBe(pair[0] === 'to');
  }
});

test('without a passage, homophone tasks use only words that children know', () => {
  const all = lessonInput('steady-steps', 60, { bySight: Object.keys(clues.clues) });
  const whole = findHomophones(all).filter(({ words }) => words.filter(({ met }) => met).length > 1);
  expect(whole.length).toBeGreaterThan(90);
  const met = new Set(clues.met.split(' '));
  for (const seed of [1, 2, 3, 4, 5, 6]) {
    for (const [shown, asked] of makeOf(homophones, all, seed, { count: '8' }).blocks[0]!.rows) {
      for (const word of [asked!, ...shown!.split(/\u00a0+/)]) {
        if (met.has(word) || word.includes("'")) continue;
        // The rank is by film subtitles (SUBTLEX), as in the bank.
        const { base } = all.analyzer.analyze(word).readings[0]!;
        const rank = all.bank.find(word)?.rank ?? all.bank.find(base ?? '')?.rank;
        expect(rank, word).toBeLessThan(13_000);
        expect(['duct', 'tract', 'throes', 'vane', 'altar', 'manor', 'lapse']).not.toContain(word);
      }
    }
  }
  const text = { title: '', text: 'The altar was white.' };
  expect(findHomophones({ ...all, passage: text })[0]!.words.every(({ met }) => met)).toBe(true);
});

test('the past form read in a passage does not count as a homophone of reed', () => {
  const passage = { title: '', text: 'Ines had read the book.' };
  const found = findHomophones({
    ...lessonInput('steady-steps', 60, { bySight: ['read', 'reed'] }),
    passage,
  });
  expect(found.flatMap(({ inPassage }) => inPassage)).not.toContain('read');
});
