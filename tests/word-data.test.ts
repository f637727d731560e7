import { readdirSync, readFileSync } from 'node:fs';
import { Ajv } from 'ajv';
import { describe, expect, test } from 'vitest';
import divisions from '../src/analyze/syllables/divisions.json' with { type: 'json' };
import schema from '../src/data/engine-words.schema.json' with { type: 'json' };
import { checkRows, readSourceRows } from '../src/data/read-source-rows.ts';
import { readUnfitWords } from '../src/data/read-unfit-words.ts';
import { checkList, readPhrases, readWordList } from '../src/data/read-word-list.ts';
import { sourceTables } from '../src/data/source-tables.ts';
import { readOwnSwaps } from '../src/data/swap/read-own-swaps.ts';

const read = (path: string): string => readFileSync(new URL(`../${path}`, import.meta.url), 'utf8');
const files = readdirSync(new URL('../src/data/source', import.meta.url)).filter(
  (file) => file !== 'README.md',
);
const readme = read('src/data/source/README.md');
const told = [...readme.matchAll(/^\| `([^`]+)` \| ([^|]+)/gm)].map(([, file, form]) => ({
  file: file!,
  form: form!.trim(),
}));
const engineFiles = Object.keys(schema.properties) as (keyof typeof schema.properties)[];

test('the README describes every file of words, and no other file', () => {
  expect(told.map(({ file }) => file).sort()).toEqual([...files, ...engineFiles].sort());
});

test('the README names the columns of each table', () => {
  for (const [file, { columns }] of Object.entries(sourceTables))
    expect(told.find((one) => one.file === file)?.form, file).toBe(
      columns.map(({ name }) => name).join(', '),
    );
});

test('every list of words of the engine has a defined form', () => {
  const json = ['analyze', 'swap', 'variety', 'lesson'].flatMap((folder) =>
    readdirSync(new URL(`../src/${folder}`, import.meta.url), { recursive: true, encoding: 'utf8' })
      .filter((file) => file.endsWith('.json'))
      .map((file) => `src/${folder}/${file}`),
  );
  // Patterns, learnt numbers and fingerprints are no words, and have tests of their own.
  const others = /catalogue\/|tsconfig|weights\.json$|mistakable\.json$/;
  expect(json.filter((file) => !others.test(file)).sort()).toEqual([...engineFiles].sort());
});

describe.each(files)('%s', (file) => {
  test('each line is well formed, in order and not repeated', () => {
    if (file === 'swaps.tsv') expect(readOwnSwaps().length).toBeGreaterThan(10_000);
    else if (file.endsWith('.tsv')) expect(readSourceRows(file).length).toBeGreaterThan(5);
    else if (file === 'phrases.txt') expect(readPhrases(file).size).toBeGreaterThan(5);
    else expect(readWordList(file).size).toBeGreaterThan(5);
  });

  test('ends with one newline, and has no space at the end of a line', () => {
    expect(read(`src/data/source/${file}`)).toMatch(/\S\n$/);
    expect(read(`src/data/source/${file}`)).not.toMatch(/[ \t\r]$/m);
  });
});

test.each([
  ['british\tamerican\n', 'line 1: the head is: word, reason'],
  ['word\treason\nsofa none\n', 'line 2: give word, reason with a tab between them, not: sofa none'],
  ['word\treason\nSofa\tnone\n', 'line 2: word is one word in small letters, not: Sofa'],
  ['word\treason\nsofa\tnone\nsofa\tnone\n', 'line 3: sofa is there twice'],
  ['word\treason\nsofa\tnone\nchair\tnone\n', 'line 3: chair comes before sofa in the alphabet'],
])('a bad table is reported with its line and the reason: %j', (content, message) => {
  const table = sourceTables['morphology-deny.tsv']!;
  expect(() => checkRows('morphology-deny.tsv', content, table)).toThrow(`morphology-deny.tsv, ${message}`);
});

test.each([
  ['# one\nb a\n', 'line 2: a comes before b in the alphabet'],
  ['a\n# two\na\n', 'line 3: a is there twice'],
  ['a B\n', 'line 1: "B" is not in small letters with single spaces'],
])('a bad list is reported with its line and the reason: %j', (content, message) => {
  expect(() => checkList('list.txt', content, /^[a-z]+$/, (line) => line.split(' '))).toThrow(message);
});

describe.each(engineFiles)('%s', (file) => {
  const content: unknown = JSON.parse(read(file));

  test('has its defined form', () => {
    const ajv = new Ajv({ strict: false, validateFormats: false });
    const validate = ajv.compile({ $defs: schema.$defs, ...schema.properties[file] });
    validate(content);
    expect(
      validate.errors?.map(({ instancePath, message }) => `${instancePath}: ${message}`),
    ).toBeUndefined();
  });

  test('has its lists in alphabetical order', () => {
    // The order has a meaning in these files: one rule or form must come before another, or the more likely entry comes
    // first.
    if (/reading-rules|irregular-|affix|rule-sounds|sentences|begin-passage|first-names|clues/.test(file))
      return;
    const lines = /topic-words|word-parts|late-words|plain-words|opaque-words|name-parts/.test(file);
    expect(unsortedIn(content, '', lines)).toEqual([]);
  });
});

test('a list that is out of order is found', () => {
  expect(unsortedIn({ kind: ['b', 'a'], other: [['a', 'b']] }, '', false)).toEqual(['/kind: a']);
  expect(unsortedIn({ kind: 'b a c' }, '', true)).toEqual(['/kind: a']);
});

// Outside sources: npm naughty-words and profane-words. Plain words that these lists contain because of a second
// meaning are named in `plain`.
test('words of the word data that pupils may see are fit for a primary school', () => {
  const plain = new Set(['chug', 'snatch']);
  const unfit = readUnfitWords();
  const shown = [
    ...readSourceRows('meanings.tsv').flatMap(([word, meaning]) => [
      word!,
      ...meaning!.toLowerCase().split(/[^a-z]+/),
    ]),
    ...readWordList('more-lesson-words.txt'),
    ...[...readPhrases('phrases.txt')].flatMap((phrase) => phrase.split(' ')),
    ...readSourceRows('irregular-forms.tsv').flatMap(([lemma, , , form]) => [lemma!, ...form!.split(' ')]),
  ];
  expect([...new Set(shown)].filter((word) => unfit.has(word) && !plain.has(word)).sort()).toEqual([]);
});

/**
 * Returns the path of each list that is not in order, with the first word that is out of order. With `lines`, words
 * separated by spaces are a list.
 */
function unsortedIn(value: unknown, path: string, lines: boolean): string[] {
  const words = lines && typeof value === 'string' ? value.split(' ') : value;
  if (
    Array.isArray(words) &&
    words.every((one) => typeof one === 'string' && !(lines && one.includes(' ')))
  ) {
    const late = words.find((word, i) => i > 0 && word < words[i - 1]);
    return late === undefined ? [] : [`${path}: ${late}`];
  }
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, one]) => unsortedIn(one, `${path}/${key}`, lines));
}

test('the divisions by hand are in alphabetical order, each word once', () => {
  const words = divisions.map(({ division }) => division.replaceAll('.', ''));
  expect(words).toEqual([...new Set(words)].sort());
});
