import type { LessonInput } from '../lesson-input.ts';
import type { LessonBlock, PartMaker } from '../lesson-part.ts';
import { numberChoice } from '../number-choice.ts';
import type { Picker } from '../picker.ts';
import { findRow } from './find-row.ts';
import { type MappedWord, mapLetters, soundsOf } from './map-letters.ts';

/** A cell that is empty on the answer key and a line to write on for pupils. */
const TO_WRITE = '\u00a0';
/** The gap between words in a row. */
const GAP = '\u2003';

/**
 * By-sight words with their sounds mapped to letters, lines to write the words on, and a row in which to find each
 * word.
 */
export const bySight: PartMaker = {
  id: 'by-sight',
  title: 'By-sight words',
  extra: true,
  use: 'Match the sounds of each word to its letters and mark the part to learn by heart. Then pupils write the word and find it in a row of words.',
  choices: () => [numberChoice('count', 'How many', [2, 3, 4, 5, 6], 3)],
  make(input, chosen, picker) {
    const words = chooseBySight(input, Number(chosen('count')) || 3, picker);
    if (words.length === 0) {
      return {
        blocks: [],
        says: 'This group has no by-sight words yet. Add them on the Groups page, or choose a later step.',
      };
    }
    return {
      says: null,
      blocks: [mapBlock(input, words), writeBlock(words), findBlock(input, words, picker)].filter(
        ({ rows }) => rows.length > 0,
      ),
    };
  },
};

/**
 * Chooses words of the step first, then words of earlier steps, then the group's own words. Among the earlier steps,
 * the latest are likelier. Words that can be sounded out by now are left out if other words remain. Words of a single
 * letter are left out.
 */
function chooseBySight(input: LessonInput, count: number, picker: Picker): string[] {
  const { group, sequence, known } = input;
  const steps = sequence?.steps.slice(0, group.step) ?? [];
  const isFit = (word: string): boolean => known.reads(word) && /^[\p{L}'’]+$/u.test(word);
  const now = [...new Set(steps.at(-1)?.bySight ?? [])].filter(isFit);
  const before = [
    ...new Set([
      ...steps
        .slice(0, -1)
        .toReversed()
        .flatMap(({ bySight }) => bySight),
      ...group.bySight,
    ]),
  ].filter((word) => isFit(word) && !now.includes(word) && word.length > 1);
  const first = picker.pick(now, count);
  const irregular = before.filter((word) => mapOf(input, word)?.byHeart !== '');
  const more = picker.pickEarly(irregular, count - first.length);
  const rest = before.filter((word) => !irregular.includes(word));
  return [...first, ...more, ...picker.pickEarly(rest, count - first.length - more.length)];
}

function mapOf({ analyzer, known }: LessonInput, word: string): MappedWord | null {
  const reading = analyzer.analyze(word.toLowerCase()).readings[0];
  return reading ? mapLetters(word, reading, known) : null;
}

function mapBlock(input: LessonInput, words: readonly string[]): LessonBlock {
  return {
    id: 'map',
    title: 'Say each sound. The part in brackets is learned by heart.',
    layout: 'table',
    note: 'Say the word, tap its sounds, and match each sound to its letters. Brackets mark letters that do not follow a pattern taught so far.',
    columns: [
      { head: 'Word', shows: 'both' },
      { head: 'Letters by sound', shows: 'free' },
      { head: 'Sounds', shows: 'key' },
      { head: 'By heart', shows: 'key' },
    ],
    rows: words.map((word) => {
      const mapped = mapOf(input, word);
      if (!mapped) {
        const units = input.analyzer.analyze(word.toLowerCase()).readings[0]?.units ?? [];
        return [word, `[${word}]`, soundsOf(units, input.known), 'the whole word'];
      }
      return [word, mapped.letters, mapped.sounds, mapped.byHeart || 'nothing: it can be sounded out now'];
    }),
  };
}

function writeBlock(words: readonly string[]): LessonBlock {
  return {
    id: 'write',
    title: 'Say it, write it three times',
    layout: 'table',
    columns: [
      { head: '', shows: 'both' },
      { head: '', shows: 'blank' },
      { head: '', shows: 'blank' },
      { head: '', shows: 'blank' },
    ],
    rows: words.map((word) => [word, TO_WRITE, TO_WRITE, TO_WRITE]),
  };
}

function findBlock(input: LessonInput, words: readonly string[], picker: Picker): LessonBlock {
  return {
    id: 'find',
    title: 'Find the word each time and circle it',
    layout: 'table',
    columns: [
      { head: '', shows: 'both' },
      { head: '', shows: 'both' },
    ],
    rows: words.flatMap((word) => {
      const row = findRow(input, word, words, picker);
      return row.length === 0 ? [] : [[word, row.join(GAP)]];
    }),
  };
}
