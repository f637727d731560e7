import { findSentences } from '../../analyze/index.ts';
import type { LessonInput } from '../lesson-input.ts';

const FEWEST_WORDS = 3;
const MOST_WORDS = 10;

/**
 * The sentences of the passage a group can write: up to ten words, all of them readable, those that practise what the lesson
 * is about first. `The ferry docked at six.` is one; a heading without a full stop or a line with a number is none.
 */
export function findInPassage({ passage, known, focus }: LessonInput): string[] {
  const sentences = (passage?.text ?? '')
    .split('\n')
    .flatMap((line) => findSentences(line).map(({ start, end }) => line.slice(start, end).trim()))
    .filter((sentence) => {
      const words = sentence.split(/\s+/).length;
      return words >= FEWEST_WORDS && words <= MOST_WORDS && isPlain(sentence) && known.reads(sentence);
    });
  const practises = (sentence: string): boolean =>
    sentence
      .split(/[^\p{L}'’]+/u)
      .some((word) => known.find(word)?.reading.requires.some((id) => focus.includes(id)) ?? false);
  const once = [...new Set(sentences)];
  return [...once.filter(practises), ...once.filter((sentence) => !practises(sentence))];
}

/** A capital, letters and plain marks, a full stop: nothing that would have to be explained. */
function isPlain(sentence: string): boolean {
  return /^["“‘]?\p{Lu}[\p{L}\s,'’"“”‘!?.–-]*[.!?]["”’]?$/u.test(sentence);
}
