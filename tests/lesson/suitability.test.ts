import { expect, test } from 'vitest';
import { catalogue } from '../../src/analyze/index.ts';
import { readUnfitWords } from '../../src/data/read-unfit-words.ts';
import { readWordList } from '../../src/data/read-word-list.ts';
import homophoneClues from '../../src/lesson/homophones/clues.json' with { type: 'json' };
import type { Column, LessonInput, LessonPart } from '../../src/lesson/index.ts';
import { parts } from '../../src/lesson/index.ts';
import { lateFrames } from '../../src/lesson/sentences/late-frames.ts';
import { verbFrames } from '../../src/lesson/sentences/verb-frames.ts';
import { phraseClasses, wordClasses } from '../../src/lesson/sentences/vocabulary.ts';
import written from '../../src/lesson/sentences/written-sentences.json' with { type: 'json' };
import { shortForms } from '../../src/lesson/word-lists/listed-words.ts';
import { inVariety } from '../../src/variety/index.ts';
import { makeOf, storm, unreadable } from './check-sheet.ts';
import { lessonInput, sequences, someSteps } from './load-lesson.ts';

/** Words that are allowed because they are harmless as part of another word: the lord of landlord. */
const PLAIN = new Set(['lord']);

/** Words that were checked one by one. Some of them are on the registry lists for another meaning (chug). */
const harmless = readWordList('more-lesson-words.txt');
/**
 * The words of npm naughty-words and profane-words and of our own list. Spellings taught as letters (ing) are left out,
 * since they are not words on a sheet.
 */
const spellings = new Set(catalogue.flatMap(({ letters }) => letters.split(' ')));
const banned = new Set(
  [
    ...[...readUnfitWords()].filter((word) => !harmless.has(word)),
    ...readWordList('not-in-lessons.txt'),
  ].filter((word) => word.length > 2 && !spellings.has(word) && !PLAIN.has(word)),
);

/** Some twenty steps from all three sequences. */
const twenty = sequences.flatMap((sequence) =>
  someSteps(sequence).map((step) => ({ id: sequence.id, step })),
);

interface Item {
  readonly from: string;
  readonly block: string;
  readonly head: string;
  readonly text: string;
}

function itemsOf(from: string, { blocks }: LessonPart, shows: (column: Column) => boolean): Item[] {
  return blocks.flatMap(({ id, columns, rows }) =>
    rows.flatMap((row) =>
      row.flatMap((text, i) => {
        const column = (columns[i] ?? columns[0])!;
        return shows(column) && text !== '' ? [{ from, block: id, head: column.head, text }] : [];
      }),
    ),
  );
}

/** Returns the words in lower case, without the marks of a dictionary: hō·p\u2009ing becomes hoping. */
function wordsOf(text: string): string[] {
  const plain = text.normalize('NFD').replace(/[\u0300-\u036f·\u2009\u200a\u202f]/g, '');
  return (
    plain
      .toLowerCase()
      .replaceAll('’', "'")
      .match(/[a-z]+(?:'[a-z]+)?/g) ?? []
  );
}

let bases: ReadonlySet<string> | undefined;

/** Words of the handwritten verbs, phrases, things and sentences, for example June and shanty. */
const ofSentences = new Set(
  [verbFrames, phraseClasses, wordClasses, { lateFrames }, written.sentences]
    .flatMap((words) => Object.values(words).flat())
    .flatMap((text) => [text, inVariety(text, 'american')])
    .flatMap(wordsOf),
);

/**
 * Whether a word has a known origin: the bank, the passage, the lists for sentences, the names, the short forms, the
 * homophones with our own clues, or the words learnt as a whole. The base of a bank word counts too.
 */
function isOrdinary(word: string, { bank, analyzer, group, judge, passage }: LessonInput): boolean {
  bases ??= new Set(bank.words.map((each) => analyzer.analyze(each.word).readings[0]!.base ?? ''));
  const plain = word.replace(/'s?$/, '');
  return (
    [word, plain].some(
      (each) => bank.find(each) !== undefined || bank.find(each.toUpperCase()) !== undefined,
    ) ||
    bases.has(word) ||
    bank.find(analyzer.analyze(word).readings[0]?.base ?? '') !== undefined ||
    ofSentences.has(word) ||
    PLAIN.has(word) ||
    judge(word).standing === 'by-sight' ||
    Object.hasOwn(homophoneClues.clues, word) ||
    shortForms.some((form) => form.toLowerCase() === word) ||
    group.names.some((name) => name.toLowerCase() === plain) ||
    wordsOf(passage?.text ?? '').includes(word)
  );
}

test('two thousand items from twenty steps are suitable for a class', { timeout: 240_000 }, () => {
  const items: Item[] = [];
  const strange: string[] = [];
  for (const { id, step } of twenty) {
    const input = { ...lessonInput(id, step), passage: storm };
    for (const maker of parts) {
      const from = `${maker.id} at ${id} ${step}`;
      for (const seed of [step, step + 500]) {
        const part = makeOf(maker, input, seed);
        expect(makeOf(maker, input, seed), from).toEqual(part);
        expect(unreadable(part, input), from).toEqual([]);
        items.push(...itemsOf(from, part, () => true));
        for (const { block, head, text } of itemsOf(
          from,
          part,
          ({ shows }) => shows === 'both' || shows === 'blank',
        )) {
          if (block === 'nonsense' || block === 'made-up' || head === 'Letters') continue;
          const words = wordsOf(text);
          strange.push(
            ...words.filter((word) => !isOrdinary(word, input)).map((word) => `${from} ${block}: ${word}`),
          );
        }
      }
    }
  }
  expect(items.length).toBeGreaterThan(2000);
  const ofPassage = new Set(wordsOf(storm.text));
  const coarse = items.flatMap(({ from, block, text }) =>
    wordsOf(text)
      .filter((word) => !ofPassage.has(word) && (banned.has(word) || banned.has(word.replace(/'s?$/, ''))))
      .map((word) => `${from} ${block}: ${word} in “${text}”`),
  );
  expect(coarse).toEqual([]);
  expect(strange).toEqual([]);
});
