import { type PhraseWord, weighBreak } from './break-rules.ts';
import { type PhraseClass, phraseClass, takesTo } from './phrase-words.ts';

/** The cost of a phrase, by its number of words. Two to five words are easily held in one breath. Our own figures. */
const COST = [0, 1.4, 0.2, 0, 0, 0.4, 1.2, 2.2, 3.4];

/**
 * Cuts a sentence into phrases, as one reads it aloud smoothly: `The old ferry`, `came slowly`, `into the harbour.`
 * Joined by a space the phrases are the sentence. The worth of each break (break-rules.ts) is weighed against phrases
 * of one word and of more than five.
 */
export function cutPhrases(sentence: string): string[] {
  const words = readWords(sentence);
  const weights = words.map((_, i) => (i === 0 ? 0 : weighBreak(words, i)));
  // The best way to cut the first n words: its worth and where its last phrase begins.
  const best: { worth: number; from: number }[] = [{ worth: 0, from: 0 }];
  for (let to = 1; to <= words.length; to++) {
    let found = { worth: Number.NEGATIVE_INFINITY, from: 0 };
    for (let from = Math.max(0, to - 16); from < to; from++) {
      const length = to - from;
      const cost = COST[length] ?? length - 4.6;
      const worth = best[from]!.worth + weights[from]! - cost;
      if (worth > found.worth) found = { worth, from };
    }
    best.push(found);
  }
  const phrases: string[] = [];
  for (let to = words.length; to > 0; to = best[to]!.from) {
    phrases.unshift(
      words
        .slice(best[to]!.from, to)
        .map(({ shown }) => shown)
        .join(' '),
    );
  }
  return phrases;
}

function readWords(sentence: string): PhraseWord[] {
  const words: PhraseWord[] = [];
  for (const shown of sentence.split(/\s+/).filter((each) => each !== '')) {
    const bare = shown.replace(/^[^\p{L}\p{N}]+|[^\p{L}\p{N}]+$/gu, '');
    const word = bare.toLowerCase();
    words.push({ shown, word, is: inPlace(word, phraseClass(bare, words.length === 0), words) });
  }
  return words.map((each, i) => {
    if (isOrder(words, i) || isOnlyVerb(words, i)) return { ...each, is: 'verb' };
    if (isReason(words, i)) return { ...each, is: 'clause' };
    if (isTold(words, i)) return { ...each, is: 'object' };
    return each.word === 'next' && words[i + 1]?.word === 'to' ? { ...each, is: 'preposition' } : each;
  });
}

/** Returns whether a word is the only verb, after a thing and its place: `serves` in `The shop by the dock serves crab`. */
function isOnlyVerb(words: readonly PhraseWord[], i: number): boolean {
  const shape = words.slice(i - 3, i + 1).map(({ is }) => is);
  return (
    i >= 4 &&
    words[0]!.is === 'determiner' &&
    shape.join(' ') === 'preposition determiner other other' &&
    !words.some(({ is }) => is === 'verb' || is === 'helper')
  );
}

/** Returns whether `so` gives a reason: `We tiptoe so the baby can sleep`, but not `so fast`. */
function isReason(words: readonly PhraseWord[], i: number): boolean {
  return words[i]!.word === 'so' && i > 1 && /^(?:determiner|subject|relative)$/.test(words[i + 1]?.is ?? '');
}

/**
 * Returns whether `you` is the person who is told something: `We will show you how`, but not `the words you do not
 * know`.
 */
function isTold(words: readonly PhraseWord[], i: number): boolean {
  return (
    words[i]!.word === 'you' &&
    words[i - 1]?.is === 'other' &&
    !/^(?:verb|helper)$/.test(words[i + 1]?.is ?? '')
  );
}

/**
 * Returns whether somebody is told to do something: `stop` in `Just stop the music`, `tape` in `Find a tin and tape the
 * lid`.
 */
function isOrder(words: readonly PhraseWord[], i: number): boolean {
  if (words[i]!.is !== 'other' || words[i + 1]?.is !== 'determiner' || /[,.;:!?]/.test(words[i]!.shown))
    return false;
  const before = words[i - 1]?.word ?? '';
  if (before === 'and') return /^(?:verb|other)$/.test(words[0]!.is);
  return /^(?:just|please|never|not|don't|to)$/.test(before);
}

/**
 * Returns the class of a word after the words before it: `it` in `saw it` is no subject, and `row` in `we row` and
 * `want to row` is a verb.
 */
function inPlace(word: string, is: PhraseClass, words: readonly PhraseWord[]): PhraseClass {
  const before = words.at(-1);
  if (
    (word === 'it' || word === 'you') &&
    (before?.is === 'verb' || before?.is === 'preposition' || before?.word === 'thank')
  )
    return 'object';
  if (is !== 'other' || !before) return is;
  const isDoing =
    /^(?:i|he|she|we|they)$/.test(before.word) ||
    (before.is === 'helper' && !/^(?:is|are|was|were|am|be|been|being|has|have|had)$/.test(before.word)) ||
    (before.word === 'to' && takesTo(words.at(-2)?.word ?? ''));
  return isDoing && !/ly$|^(?:then|first|all|still|also|now|always|often)$/.test(word) ? 'verb' : is;
}
