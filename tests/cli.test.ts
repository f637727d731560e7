import { spawn } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, describe, expect, test } from 'vitest';
import type { Report } from '../src/analyze/types.ts';

/** Tests the commands as scripts call them. Other programs rely on the format of the output. */

const root = fileURLToPath(new URL('..', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'wordreach-'));
afterAll(() => rmSync(folder, { recursive: true }));

const story = 'The Marigold is late. “Is it the fog?” said Bram. He had 12 boxes of fish on it.';
const files = {
  herons: save('herons.json', {
    name: 'Herons',
    sequence: null,
    alsoTaught: ['s', 'short-a', 'short-i', 'f', 'sh', 'h', 'd', 't', 'n', 'short-o', 'g', 's-z'],
    bySight: ['the', 'said', 'he'],
    names: ['Bram'],
  }),
  story: save('story.txt', story),
  page: save(
    'story.html',
    `<!doctype html><title>x</title><script>var seal</script><p>${story.replace('boxes', 'b<b>oxe</b>s')}`,
  ),
};

describe('word', () => {
  test('--json gives one object for each word, in order, spelt as in the call', async () => {
    const { out, code } = await run('word', ['--json', 'hopping', 'Farmer’s', 'zzyx']);
    expect(code).toBe(0);
    const [hopping, farmers, unread] = JSON.parse(out);
    expect(hopping).toEqual({
      word: 'hopping',
      readings: [
        {
          pronunciation: 'HH AA P IH NG',
          source: 'dictionary',
          units: [
            { letters: 'h', sound: 'HH', pattern: 'h' },
            { letters: 'o', sound: 'AA', pattern: 'short-o' },
            { letters: 'pp', sound: 'P', pattern: 'p' },
            { letters: 'ing', sound: 'IH.NG', pattern: 'suffix-ing', affix: 'suffix' },
          ],
          base: 'hop',
          affixes: [{ text: 'ing', kind: 'suffix', change: 'double' }],
          syllables: [
            { text: 'hop', type: 'closed' },
            { text: 'ping', type: 'closed' },
          ],
          requires: ['change-double', 'h', 'p', 'short-o', 'suffix-ing'],
          madeOf: {
            parts: [{ word: 'hop', requires: ['h', 'p', 'short-o'] }],
            joint: ['change-double', 'suffix-ing'],
          },
        },
      ],
    });
    expect(farmers.word).toBe('Farmer’s');
    expect(farmers.readings[0].affixes.at(-1)).toEqual({ text: "'s", kind: 'possessive', change: 'none' });
    expect(unread.readings).toHaveLength(1);
    expect(unread.readings[0].source).not.toBe('dictionary');
  });

  test('- reads words from stdin', async () => {
    const { out } = await run('word', ['--json', '-'], 'boat\n  rain\n');
    expect(JSON.parse(out).map(({ word }: { word: string }) => word)).toEqual(['boat', 'rain']);
  });

  test('without --json it is plain text, 80 characters wide', async () => {
    const { out } = await run('word', ['unhappily', 'lead', "can't"]);
    expect(out).toContain('un- + happy + -ly (change y to i)');
    expect(out).toContain('lead (2 of 2)');
    expectPlain(out);
  });

  test('ends without an error if the program that reads its output stops early', async () => {
    const words = Array.from({ length: 3000 }, () => 'lighthouse');
    expect(await run('word', ['--json', '-'], words.join(' '), 10)).toMatchObject({ err: '', code: 0 });
  });
});

describe('vet', () => {
  const expected: Report = {
    faults: [],
    words: [
      { word: 'boxes', count: 1, standing: 'beyond', missing: ['b', 'suffix-es', 'x'] },
      { word: 'late', count: 1, standing: 'beyond', missing: ['a_e', 'l'] },
      { word: 'of', count: 1, standing: 'beyond', missing: ['irregular', 'o-short-u'] },
      { word: 'is', count: 2, standing: 'reads', missing: [] },
      { word: 'it', count: 2, standing: 'reads', missing: [] },
      { word: 'fish', count: 1, standing: 'reads', missing: [] },
      { word: 'fog', count: 1, standing: 'reads', missing: [] },
      { word: 'had', count: 1, standing: 'reads', missing: [] },
      { word: 'on', count: 1, standing: 'reads', missing: [] },
      { word: 'the', count: 2, standing: 'by-sight', missing: [] },
      { word: 'he', count: 1, standing: 'by-sight', missing: [] },
      { word: 'said', count: 1, standing: 'by-sight', missing: [] },
      { word: 'bram', count: 1, standing: 'name', missing: expect.any(Array) },
      { word: 'marigold', count: 1, standing: 'name', missing: expect.any(Array) },
    ],
    tally: {
      running: 15,
      reads: 8,
      fresh: 0,
      bySight: 4,
      names: 2,
      unsure: 0,
      beyond: 3,
      skipped: 1,
      reach: 80,
    },
    gaps: [
      { pattern: 'b', opens: 0, words: ['boxes'] },
      { pattern: 'l', opens: 0, words: ['late'] },
      { pattern: 'x', opens: 0, words: ['boxes'] },
      { pattern: 'a_e', opens: 0, words: ['late'] },
      { pattern: 'o-short-u', opens: 0, words: ['of'] },
      { pattern: 'suffix-es', opens: 0, words: ['boxes'] },
    ],
  };

  test.each([
    ['a text file', files.story, ''],
    ['a page', files.page, ''],
    ['stdin', '-', story],
    ['a page through stdin', '-', readFileSync(files.page, 'utf8')],
  ])('--json gives the whole report of %s', async (_, source, input) => {
    const { out, err, code } = await run('vet', ['--group', files.herons, '--json', source], input);
    expect({ err, code }).toEqual({ err: '', code: 0 });
    expect(JSON.parse(out)).toEqual(expected);
  });

  test('without --json it is plain text, 80 characters wide', async () => {
    const { out } = await run('vet', ['--group', 'profiles/groups/herons.json', files.story]);
    expect(out).toContain('story.txt\nfor Herons · Steady steps, step 24');
    expect(out).toMatch(/\d+\.\d% readable/);
    expectPlain(out);
  });

  test('a sequence may be a file, with a path relative to the group file', async () => {
    save('own-steps.json', {
      id: 'own-steps',
      name: 'Own steps',
      source: 'this test',
      licence: 'MIT',
      steps: [{ teaches: ['f', 'sh', 'short-i'] }],
    });
    const group = save('own.json', { name: 'Own', sequence: './own-steps.json', step: 1 });
    const { out } = await run('vet', ['--group', group, '--json', '-'], 'fish');
    expect(JSON.parse(out).words).toEqual([{ word: 'fish', count: 1, standing: 'fresh', missing: [] }]);
  });

  const herons = { name: 'Herons' };
  test.each<[string, string, string]>([
    [
      'an unknown pattern',
      JSON.stringify({ ...herons, alsoTaught: ['m', 'shorta'] }),
      'alsoTaught[1]: there is no pattern "shorta". Did you mean "short-a"?',
    ],
    [
      'an unknown key',
      JSON.stringify({ ...herons, bysight: [] }),
      'bysight: there is no key "bysight". Did you mean "bySight"?',
    ],
    [
      'an unknown sequence',
      JSON.stringify({ ...herons, sequence: 'stedy-steps', step: 1 }),
      'sequence: there is no sequence "stedy-steps". Did you mean "steady-steps"?',
    ],
    [
      'a missing sequence file',
      JSON.stringify({ ...herons, sequence: './none.json', step: 1 }),
      'sequence: there is no file "./none.json", seen from the group file.',
    ],
    [
      'a step too far',
      JSON.stringify({ ...herons, sequence: 'steady-steps', step: 900 }),
      'step: is 900, but "steady-steps" has',
    ],
    [
      'broken JSON',
      '{\n  "name": "Herons",,\n}',
      'bad.json:2:20: this is not valid JSON: Expected double-quoted property name.',
    ],
    ['an empty file', '', 'this is not valid JSON: Unexpected end of JSON input.'],
  ])(
    '%s is refused: the message names its place, the exit code is 2 and nothing is printed',
    async (_, content, message) => {
      const group = save('bad.json', content);
      const { out, err, code } = await run('vet', ['--group', group, '--json', files.story]);
      expect({ out, code }).toEqual({ out: '', code: 2 });
      expect(err).toContain('bad.json');
      expect(err).toContain(message);
      expect(err.trimEnd().split('\n')).toHaveLength(1);
    },
  );
});

test.each<[string, string, string[], string]>([
  ['no word', 'word', ['--json'], 'No word given.'],
  ['no group', 'vet', ['--json', files.story], 'No group given.'],
  ['no text', 'vet', ['--group', files.herons], 'Give a text to vet.'],
  ['no such group', 'vet', ['--group', 'none.json', files.story], 'none.json: there is no such file'],
  [
    'the report of two texts',
    'vet',
    ['--group', files.herons, '--json', files.story, files.page],
    'there are 2; give --out json.',
  ],
  ['stdin among others', 'vet', ['--group', files.herons, '-', files.story], 'Text on stdin (-)'],
  ['no such kind', 'vet', ['--group', files.herons, '--out', 'xls', files.story], 'There is no --out xls.'],
  ['half a thread', 'vet', ['--group', files.herons, '--jobs', '0.5', files.story], 'Give --jobs'],
  ['lines and files', 'vet', ['--group', files.herons, '--jsonl', files.story], 'With --jsonl'],
  ['words nowhere', 'vet', ['--group', files.herons, '--words', files.story], '--words goes with'],
  ['an unknown option', 'patterns', ['--jso'], "Unknown option '--jso'"],
])('%s gives one clear message and exit code 2', async (_, command, args, message) => {
  const { out, err, code } = await run(command, args);
  expect({ out, code }).toEqual({ out: '', code: 2 });
  expect(err).toContain(message);
  expect(err).not.toContain('    at ');
});

describe('patterns', () => {
  test('--json prints the catalogue with its names', async () => {
    const { out } = await run('patterns', ['--json']);
    const read = (file: string): object[] =>
      JSON.parse(readFileSync(join(root, 'src/analyze/catalogue', file), 'utf8'));
    const names = read('names.json');
    expect(JSON.parse(out)).toEqual(read('catalogue.json').map((row, i) => ({ ...row, ...names[i] })));
  });

  test('without --json it is plain text, 80 characters wide', async () => {
    const { out } = await run('patterns', []);
    expect(out).toContain('ai as in rain');
    expectPlain(out);
  });
});

function expectPlain(text: string): void {
  expect(text).not.toContain('\u001b');
  expect(text.split('\n').filter((line) => line.length > 80)).toEqual([]);
}

function save(name: string, content: unknown): string {
  const file = join(folder, name);
  writeFileSync(file, typeof content === 'string' ? content : JSON.stringify(content));
  return file;
}

/** Runs a command. With `stopAfter`, its output is no longer read after that many characters. */
function run(
  command: string,
  args: readonly string[],
  input = '',
  stopAfter = Number.POSITIVE_INFINITY,
): Promise<{ out: string; err: string; code: number | null }> {
  const { INIT_CWD: _, ...env } = process.env;
  const child = spawn(process.execPath, [join(root, `.output/cli/${command}.mjs`), ...args], {
    cwd: root,
    env,
  });
  let out = '';
  let err = '';
  child.stdout.setEncoding('utf8').on('data', (chunk: string) => {
    out += chunk;
    if (out.length > stopAfter) child.stdout.destroy();
  });
  child.stderr.setEncoding('utf8').on('data', (chunk: string) => {
    err += chunk;
  });
  child.stdin.end(input);
  return new Promise((resolve, reject) => {
    child.on('error', reject).on('close', (code) => resolve({ out, err, code }));
  });
}
