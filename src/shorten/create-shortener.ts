import type { SwapTable } from '../swap/index.ts';
import { DROP_RULES } from './drop-rules.ts';
import { findMainClause } from './find-clause.ts';
import { isSpokenOf, keepsFacts } from './keeps-facts.ts';
import { makeCut } from './make-cut.ts';
import { readWords } from './read-words.ts';
import { SPLIT_RULES } from './split-rules.ts';
import type { Cut, Rule, Shortening, ShortenOptions, Step, Word } from './types.ts';

/** Finds shorter wordings of a sentence. */
export interface Shortener {
  /**
   * Returns a shorter wording of the sentence with fewer words beyond the group. With `longest`, also splits a sentence
   * with more words than that. Returns null if no rule is certain to help. Names, numbers and negations stay. Never
   * throws.
   */
  shorten(sentence: string, options: ShortenOptions): Shortening | null;
}

/** The least number of words in a resulting sentence. */
const FEWEST = 4;
/** The least number of words in each part of a split sentence. */
const FEWEST_OF_PART = 3;

/** Creates a shortener that takes the parts of speech from the table of replacement words. */
export function createShortener(table: SwapTable): Shortener {
  const takesAn = (word: string): boolean => /^[aeiou]/.test(word) !== table.takesOtherArticle(word);
  const read = (sentence: string): Word[] => readWords(sentence, table);

  function shorten(
    sentence: string,
    { measure, next = '', longest = Infinity }: ShortenOptions,
  ): Shortening | null {
    const steps: (Step & { readonly isSafe: boolean })[] = [];
    const text = improve(sentence.trim(), next);
    if (steps.length === 0) return null;
    return {
      text,
      steps: steps.map(({ rule, removed }) => ({ rule, removed })),
      isSafe: steps.every(({ isSafe }) => isSafe),
    };

    function improve(sentence: string, next: string): string {
      let now = sentence;
      for (let better = dropOnce(now, next); better !== null; better = dropOnce(now, next)) now = better;
      return partOnce(now, next);
    }

    /**
     * Removes one part of the sentence, so that fewer words are beyond the group. Returns null if there is no such
     * part.
     */
    function dropOnce(sentence: string, next: string): string | null {
      const before = measure(sentence);
      if (before.beyond === 0) return null;
      const words = read(sentence);
      for (const rule of DROP_RULES) {
        for (const cut of rule.applies(words, sentence)) {
          const text = makeCut(sentence, cut, takesAn);
          const removed = words.filter(({ start, end }) => start >= cut.start && end <= cut.end);
          if (isTied(sentence, cut)) continue;
          if (isSpokenOf(removed, next) || !isSound(words, text, rule)) continue;
          const after = measure(text);
          if (after.beyond >= before.beyond || after.words < FEWEST) continue;
          if (after.beyond * before.words > before.beyond * after.words) continue;
          steps.push({
            rule: rule.name,
            removed: sentence.slice(cut.start, cut.end).trim(),
            isSafe: rule.isSafe,
          });
          return text;
        }
      }
      return null;
    }

    /**
     * Splits the sentence in two and makes each part as short as possible. Returns the same sentence if it is short
     * enough or cannot be split.
     */
    function partOnce(sentence: string, next: string): string {
      const before = measure(sentence);
      if (before.words <= longest) return sentence;
      const words = read(sentence);
      for (const rule of SPLIT_RULES) {
        for (const cut of rule.applies(words, sentence)) {
          const text = makeCut(sentence, cut, takesAn);
          const at = sentence.slice(0, cut.start).trimEnd().length + cut.put.lastIndexOf('. ') + 1;
          const [first, second] = [text.slice(0, at), text.slice(at).trim()];
          if (measure(first).words < FEWEST_OF_PART || measure(second).words < FEWEST_OF_PART) continue;
          if (
            measure(text).beyond > before.beyond ||
            !keepsFacts(words.filter(isNoJoiner), read(text), false)
          )
            continue;
          steps.push({ rule: rule.name, removed: '', isSafe: rule.isSafe });
          return `${improve(first, second)} ${improve(second, next)}`;
        }
      }
      return sentence;
    }
  }

  /** Returns whether the text keeps the facts and is still a whole sentence if it was one before. */
  function isSound(words: readonly Word[], text: string, rule: Rule): boolean {
    const after = read(text);
    if (!keepsFacts(words, after, rule.name === 'day of the week')) return false;
    if (/[,;:–—-]\s*[.,;:!?…)\]”]|\s\s|\(\s*\)/.test(text)) return false;
    return findMainClause(words) === null || findMainClause(after) !== null;
  }

  return { shorten };
}

function isNoJoiner({ lower }: Word): boolean {
  return lower !== 'but';
}

/** Returns whether the cut splits a hyphenated word. */
function isTied(sentence: string, { start, end }: Cut): boolean {
  return /^[-’']/.test(sentence.slice(end)) || sentence.charAt(start - 1) === '-';
}
