import clues from '../homophones/clues.json' with { type: 'json' };
import type { LessonInput } from '../lesson-input.ts';
import { passageSentences } from '../passage-sentences.ts';

const FEWEST_WORDS = 3;
const MOST_WORDS = 10;
const SHORTEST_ALIKE = 4;

/**
 * The sentences of the passage a group can write: up to ten words, all of them readable, those that practise what the lesson
 * is about apart (`own`); those with a word that sounds like another last. `The ferry docked at six.` is one; a heading without a full stop or a line with a number is none.
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

/** Whether a sentence has a word that might be another to who only hears it: The deer ate a pair. Short words of grammar (for, no) are clear. */
function soundsLikeAnother(sentence: string): boolean {
  return sentence
    .toLowerCase()
    .split(/[^\p{L}'’]+/u)
    .some((word) => word.length >= SHORTEST_ALIKE && Object.hasOwn(clues.clues, word));
}

/** A capital, letters and plain marks, a full stop: nothing that would have to be explained. */
function isPlain(sentence: string): boolean {
  // A question of a thing alone (A menu?) is no sentence.
  return (
    !/^(?:An?|The) .*\?$/.test(sentence) && /^["“‘]?\p{Lu}[\p{L}\s,'’"“”‘!?.–-]*[.!?]["”’]?$/u.test(sentence)
  );
}
