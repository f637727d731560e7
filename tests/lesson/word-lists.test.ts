import { describe, expect, test } from 'vitest';
import { listMistakable } from '../../src/data/lesson/list-mistakable.ts';
import { readUnfitWords } from '../../src/data/read-unfit-words.ts';
import { createPicker, type LessonInput } from '../../src/lesson/index.ts';
import { findContrasts } from '../../src/lesson/word-lists/find-contrasts.ts';
import { isLegal } from '../../src/lesson/word-lists/is-legal.ts';
import { isMistakable } from '../../src/lesson/word-lists/is-mistakable.ts';
import { listWords } from '../../src/lesson/word-lists/listed-words.ts';
import { makeNonsense } from '../../src/lesson/word-lists/make-nonsense.ts';
import mistakable from '../../src/lesson/word-lists/mistakable.json' with { type: 'json' };
import { cutInHalves } from '../../src/lesson/word-lists/one-syllable.ts';
import { createFindSteps } from '../../src/lesson/word-lists/one-unit-apart.ts';
import { wordLists } from '../../src/lesson/word-lists/word-lists.ts';
import { loadAnalyzer } from '../load-analyzer.ts';
import { checkOddInputs, inputAt, makeOf, steps, unreadable } from './check-sheet.ts';

/**
 * Some steps, tested with every choice. `every-step.test.ts` checks for all steps and all parts that pupils can read
 * everything.
 */
const some = steps
  .filter((_, i) => i % 20 === 3)
  .map(({ id, step }) => ({ id, step, input: inputAt(id, step) }));

test('whatever is chosen, pupils get only words they can read', () => {
  for (const { id, step, input } of some) {
    for (const choice of wordLists.choices(input)) {
      for (const { value } of choice.options) {
        const part = makeOf(wordLists, input, step, { [choice.id]: value });
        expect(unreadable(part, input), `${id} ${step} ${choice.id} ${value}`).toEqual([]);
      }
    }
  }
});

test('the word list part is made for any group and any passage', () => checkOddInputs(wordLists));

const late = inputAt('steady-steps', 60);
const listed = listWords(late);
const find = (word: string) => listed.find((each) => each.word === word)!;
const findSteps = createFindSteps(listed);
const neighbours = (word: string) => findSteps(find(word)).map(({ to }) => to.word);

describe('words one unit apart', () => {
  test.each([
    ['ship', 'chip', 'one digraph for another'],
    ['hop', 'hope', 'a split vowel is one unit'],
    ['bit', 'bite', 'the same'],
    ['lip', 'slip', 'one added'],
    ['slip', 'lip', 'one taken away'],
    ['hopping', 'hoping', 'what doubling and dropping the e hide'],
    ['jumped', 'jumping', 'one ending for another'],
  ])('include %s and %s: %s', (one, other) => expect(neighbours(one)).toContain(other));

  test.each([
    ['back', 'bake', 'a, a_e and ck, k are two'],
    ['sail', 'sale', 'nothing is heard to change'],
    ['hat', 'chart', 'two'],
    ['tar', 'tip', 'two'],
    ['part', 'party', 'no change, so not among these'],
  ])('do not include %s and %s: %s', (one, other) => {
    expect(findSteps(find(one), new Set(['change'])).map(({ to }) => to.word)).not.toContain(other);
  });
});

describe('pairs of words for a pattern', () => {
  const pairsFor = (pattern: string) =>
    findContrasts(
      listed.filter(({ requires }) => requires.includes(pattern)),
      new Set([pattern]),
      findSteps,
      200,
      createPicker(1),
    ).pairs.map((pair) => pair.map(({ word }) => word).join(' '));

  // Minimal pairs of vowel length, voicing and clusters: common practice, no source.
  test.each([
    ['o_e', 'hope hop'],
    ['start-sl', 'slip lip'],
    ['change-double', 'hopping hoping'],
    ['suffix-s', 'days day'],
  ])('for %s include “%s”', (pattern, pair) => expect(pairsFor(pattern)).toContain(pair));

  test('the second word of a pair lacks the pattern, and no word comes twice', () => {
    for (const pattern of ['ee', 'sh', 'start-bl', 'suffix-ing', 'change-drop-e']) {
      const words = pairsFor(pattern).flatMap((pair) => pair.split(' '));
      expect(words.length, pattern).toBeGreaterThan(6);
      expect(new Set(words).size, pattern).toBe(words.length);
      words.forEach((word, i) => {
        expect(find(word).requires.includes(pattern), word).toBe(i % 2 === 0);
      });
    }
  });

  /** Returns the sounds of a word. A vowel with r counts as one sound, and so does the yoo of cute. */
  const soundsOf = ({ pronunciation }: { pronunciation: string }): string[] =>
    pronunciation
      .replaceAll(/([AEIOU][A-Z]) R(?= |$)/g, '$1+R')
      .replaceAll('Y UW', 'Y+UW')
      .split(' ');

  test('children know all words of the pairs, and the words of a pair differ in the point of its question', () => {
    const kinds = new Set<string>();
    let looked = 0;
    const endings = ['start-sl', 'end-nd', 'change-double', 'change-y-to-i', 'suffix-s', 'suffix-ing'];
    const all = { id: 'steady-steps', step: 60, input: { ...late, focus: endings } };
    for (const { id, step, input } of [...some, all]) {
      const words = listWords(input);
      const stepsFrom = createFindSteps(words);
      for (const pattern of input.focus) {
        const examples = words.filter(({ requires }) => requires.includes(pattern));
        const { kind, pairs } = findContrasts(examples, new Set([pattern]), stepsFrom, 8, createPicker(step));
        for (const [one, other] of pairs) {
          looked++;
          kinds.add(kind);
          const from = `${id} ${step} ${pattern}: ${one.word} ${other.word}`;
          const [a, b] = [soundsOf(one), soundsOf(other)];
          expect(one.plain && other.plain, from).toBe(true);
          if (kind === 'added' || kind === 'changed') {
            expect(one.family === other.word || one.family === other.family, from).toBe(true);
            continue;
          }
          expect(one.built || other.built, from).toBe(kind === 'base');
          if (kind === 'more') expect(a.length - b.length, from).toBe(1);
          else
            expect(a.filter((sound, i) => sound !== b[i]).length + Math.abs(a.length - b.length), from).toBe(
              1,
            );
        }
      }
    }
    expect(looked).toBeGreaterThan(100);
    expect(kinds.size).toBeGreaterThan(3);
  });

  test.each(['syllables-2', 'type-closed', 'tion', 'schwa-a'])(
    'there are no pairs for %s, which is no single unit',
    (pattern) => {
      expect(pairsFor(pattern)).toEqual([]);
    },
  );
});

test('a chain changes one unit at a time, never twice running at one place, and repeats no word', () => {
  let longest = 0;
  for (const { step, input } of some.slice(0, 9)) {
    const all = new Map(listWords(input).map((each) => [each.word, each]));
    const stepsFrom = createFindSteps(listWords(input));
    for (const how of ['change', 'any']) {
      const made = makeOf(wordLists, input, step, { 'chain-step': how, 'chain-length': '8' });
      const chains = made.blocks.find((block) => block.id === 'chains')?.rows ?? [];
      expect(new Set(chains.flat()).size).toBe(chains.flat().length);
      for (const chain of chains) {
        longest = Math.max(longest, chain.length);
        let before = -1;
        for (const [i, word] of chain.slice(1).entries()) {
          const places = stepsFrom(all.get(chain[i]!)!)
            .filter(({ to, kind }) => to.word === word && (how === 'any' || kind === 'change'))
            .map(({ place }) => place);
          expect(places, `${chain[i]} ${word}`).not.toEqual([]);
          if (places.length === 1) expect(places[0], chain.join(' ')).not.toBe(before);
          before = places.length === 1 ? places[0]! : -1;
        }
      }
    }
  }
  expect(longest).toBe(8);
});

test('a chain begins and ends with its pattern, and at most two words and a third of all words lack the pattern', () => {
  const off = new Map<number, number>();
  for (const { id, step, input } of some) {
    const all = new Map(listWords(input).map((each) => [each.word, each]));
    for (const pattern of input.focus) {
      for (const how of ['change', 'any']) {
        const made = makeOf(wordLists, input, step, { pattern, 'chain-step': how });
        for (const chain of made.blocks.find((block) => block.id === 'chains')?.rows ?? []) {
          const words = chain.map((word) => all.get(word)!);
          const isOn = words.map(({ requires }) =>
            input.focus.length === 1 ? requires.includes(input.focus[0]!) : requires.includes(pattern),
          );
          const from = `${id} ${step} ${pattern}: ${chain.join(' ')}`;
          const lacking = isOn.filter((on) => !on).length;
          off.set(lacking, (off.get(lacking) ?? 0) + 1);
          expect(isOn[0] && isOn.at(-1), from).toBe(true);
          expect(lacking, from).toBeLessThanOrEqual(Math.min(2, chain.length / 3));
          expect(
            words.every(({ plain }) => plain),
            from,
          ).toBe(true);
        }
      }
    }
  }
  expect(off.get(0)).toBeGreaterThan(5);
  expect(off.get(2)).toBeGreaterThan(5);
});

describe('made-up words', () => {
  const analyzer = loadAnalyzer();
  const unfit = [...readUnfitWords()].filter((word) => /^[a-z]{3,}$/.test(word));
  const unfitSounds = new Set(unfit.map((word) => analyzer.analyze(word).readings[0]!.pronunciation));
  const madeAt = (input: LessonInput) =>
    input.focus.flatMap((id) =>
      makeNonsense(input, new Set([id]), 24, createPicker(9)).map((word) => ({ id, word })),
    );
  const made = some.flatMap(({ input }) => madeAt(input));
  const sounds = new Set(
    late.bank.words.map(({ word }) => analyzer.analyze(word).readings[0]!.pronunciation),
  );

  test('follow the reading rules, contain their pattern, and do not sound like a real word', () => {
    expect(made.length).toBeGreaterThan(150);
    for (const { id, word } of made) {
      const reading = analyzer.analyze(word).readings[0]!;
      expect(isLegal(word), word).toBe(true);
      expect(reading.source, word).toBe('rule');
      expect(reading.requires, word).toContain(id);
      expect(sounds.has(reading.pronunciation), word).toBe(false);
    }
  });

  // Source: the lists of npm naughty-words and profane-words.
  test('neither look nor sound like a coarse word', () => {
    for (const { word } of made) {
      expect(unfitSounds.has(analyzer.analyze(word).readings[0]!.pronunciation), word).toBe(false);
      expect(
        unfit.filter((each) => each.length < 7 && word.includes(each)),
        word,
      ).toEqual([]);
      expect(
        unfit.filter((each) => each.slice(0, -1) === word && each.length < 7),
        word,
      ).toEqual([]);
    }
  });

  test('share their ending with at least two real words, most of which pronounce the ending alike', () => {
    const ends = new Map<string, Set<string>[]>();
    for (const { word } of late.bank.words) {
      const reading = analyzer.analyze(word).readings[0]!;
      const rime = cutInHalves(word, reading)?.rime;
      if (!rime) continue;
      const [words, alike] = ends.get(rime.letters) ?? [new Set<string>(), new Set<string>()];
      words!.add(word);
      ends.set(rime.letters, [words!, alike!.add(`${word} ${rime.sound}`)]);
    }
    for (const { word } of made) {
      const rime = cutInHalves(word, analyzer.analyze(word).readings[0]!)!.rime;
      const [words, alike] = ends.get(rime.letters) ?? [new Set<string>(), new Set<string>()];
      const plainly = (sound: string): string => sound.replaceAll('AO', 'AA').replaceAll('Y UW', 'UW');
      const saidSo = [...alike!].filter((each) => plainly(each).endsWith(` ${plainly(rime.sound)}`));
      expect(saidSo.length, word).toBeGreaterThanOrEqual(2);
      expect(saidSo.length / words!.size, word).toBeGreaterThan(0.8);
    }
  });

  test.each([
    ['leer', 'L IH R', 'a word the table lacks'],
    ['scue', 'S K Y UW', 'skew by its sound'],
    ['harf', 'HH AA R F', 'half where no r is heard'],
    ['knate', 'N EY T', 'a name by its sound'],
    ['phuck', 'F AH K', 'coarse by its sound'],
    ['shet', 'SH EH T', 'coarse but for its vowel'],
    ['blasses', 'B L AE S IH Z', 'coarse in the middle'],
  ])('%s is kept out: %s', (word, sound) => expect(isMistakable(word, sound)).toBe(true));

  test.each([
    ['blim', 'B L IH M'],
    ['splone', 'S P L OW N'],
  ])('%s is allowed', (word, sound) => expect(isMistakable(word, sound)).toBe(false));

  test('are not made for a spelling with two usual sounds', () => {
    expect(made.filter(({ id }) => /^(ow-long-o|oo-book|ea-short-e|th-voiced)$/.test(id))).toEqual([]);
  });

  test('have up-to-date fingerprint lists (otherwise run `npx tsx src/data/lesson/list-mistakable.ts`)', () => {
    expect(listMistakable(analyzer)).toEqual(mistakable);
  });
});

test('words are also listed for an ending, a blend, a spelling change and a kind of syllable', () => {
  for (const [id, step, pattern] of [
    ['steady-steps', 21, 'suffix-ing'],
    ['steady-steps', 15, 'start-bl'],
    ['steady-steps', 44, 'change-drop-e'],
    ['steady-steps', 50, 'consonant-le'],
    ['steady-steps', 42, 'contraction'],
    ['steady-steps', 26, 'possessive'],
  ] as const) {
    const input = inputAt(id, step);
    const words = makeOf(wordLists, input, 3, { pattern })
      .blocks.filter((block) => block.id.startsWith('words-'))
      .flatMap(({ rows }) => rows.flat());
    expect(words.length, pattern).toBeGreaterThan(5);
    for (const word of words)
      expect(input.analyzer.analyze(word).readings[0]!.requires, word).toContain(pattern);
  }
});

test('with nothing taught, there are no lists, and a message says to choose the step of the group', () => {
  const { blocks, says } = makeOf(wordLists, { ...late, focus: [] }, 1);
  expect(blocks).toEqual([]);
  expect(says).toMatch(/Choose the group’s step/);
});
