import clues from '../homophones/clues.json' with { type: 'json' };
import type { LessonInput } from '../lesson-input.ts';
import { passageSentences } from '../passage-sentences.ts';

const FEWEST_WORDS = 3;
const MOST_WORDS = 10;
const SHORTEST_ALIKE = 4;

/**
 * Returns the sentences of the passage that a group can write. They have up to ten words, all of which the group can
 * read: `The ferry docked at six.`, but not a heading without a full stop or a line with a number. Sentences that
 * practise the lesson are in `own`. Sentences with a word that sounds like another word come last.
 */
export function findInPassage({ passage, known, focus }: LessonInput): { own: string[]; others: string[] } {
  const sentences = passageSentences(passage).filter((sentence) => {
    const words = sentence.split(/\s+/).length;
    return words >= FEWEST_WORDS && words <= MOST_WORDS && isPlain(sentence) && known.reads(sentence);
  });
  const practises = (sentence: string): boolean =>
    sentence
      .split(/[^\p{L}'’]+/u)
      .some((word) => known.find(word)?.reading.requires.some((id) => focus.includes(id)) ?? false);
  const clear = sentences.filter((sentence) => !soundsLikeAnother(sentence));
  const own = clear.filter(practises);
  const others = [...new Set([...clear, ...sentences])].filter((sentence) => !own.includes(sentence));
  return { own, others };
}

/**
 * Whether a sentence has a word that a listener may take for another word: The deer ate a pair. Short words of grammar
 * (for, no) are clear.
 */
function soundsLikeAnother(sentence: string): boolean {
  return sentence
    .toLowerCase()
    .split(/[^\p{L}'’]+/u)
    .some((word) => word.length >= SHORTEST_ALIKE && Object.hasOwn(clues.clues, word));
}

/**
 * Whether a sentence begins with a capital, has only letters and plain marks, and ends with `.`, `!` or `?`. Nothing in
 * such a sentence has to be explained.
 */
function isPlain(sentence: string): boolean {
  // A question that names only a thing (A menu?) is no sentence.
  return (
    !/^(?:An?|The) .*\?$/.test(sentence) && /^["“‘]?\p{Lu}[\p{L}\s,'’"“”‘!?.–-]*[.!?]["”’]?$/u.test(sentence)
  );
}
