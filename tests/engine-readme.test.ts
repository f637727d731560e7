import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import * as engine from '../src/analyze/index.ts';

const given = new Map<string, unknown>(Object.entries(engine));
const readme = readFileSync(new URL('../src/analyze/README.md', import.meta.url), 'utf8');
const file = (path: string): Uint8Array => readFileSync(new URL(`../${path}`, import.meta.url));

/**
 * Matches `expression; // value`, which becomes a pair of the actual result and the result stated in the readme.
 * Remarks in words are left out.
 */
const SHOWN = /^([a-z].*); \/\/ (['[\d].*)$/gm;

test('the examples in the engine’s readme give the results that the readme states', () => {
  const code = [...readme.matchAll(/```ts\n([\s\S]*?)```/g)].map(([, block]) => block).join('\n');
  const imported = [...code.matchAll(/import \{(.*)\} from/g)].flatMap(([, names]) =>
    names!.split(',').map((name) => name.trim()),
  );
  const run = new Function(
    ...imported,
    'lexiconBytes',
    'guessBytes',
    'sequenceJson',
    `const shown = [];\n${code.replace(/^import .*$/gm, '').replace(SHOWN, 'shown.push([$1, $2]);')}\nreturn shown;`,
  );
  const shown = run(
    ...imported.map((name) => given.get(name)),
    file('public/data/lexicon.bin'),
    file('public/data/guess.bin'),
    JSON.parse(`${Buffer.from(file('profiles/sequences/steady-steps.json'))}`),
  ) as [unknown, unknown][];
  expect(shown.length).toBe([...readme.matchAll(SHOWN)].length);
  expect(shown.length).toBeGreaterThan(8);
  expect(shown.map(([found]) => found)).toEqual(shown.map(([, said]) => said));
});
