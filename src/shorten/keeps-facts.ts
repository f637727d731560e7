import type { Word } from './types.ts';

/** Matches words that reverse a statement, or bind it to something. */
const TURNS =
  /^(?:not|no|never|none|nobody|nothing|nowhere|neither|nor|without|hardly|barely|scarcely|rarely|seldom|cannot|unless|except|only|but|few|fewer|less|least|if|\w+n't|false|fake|former|almost|nearly|instead|rather)$/;
const WEEKDAY = /^(?:monday|tuesday|wednesday|thursday|friday|saturday|sunday)$/;

/**
 * Returns whether a text keeps every name, number and negation of the earlier words, each as often as before. The text
 * must also keep the quotation marks and the last mark. With `isDay`, a day of the week may be missing.
 */
export function keepsFacts(before: readonly Word[], after: readonly Word[], isDay: boolean): boolean {
  const left = new Map<string, number>();
  for (const fact of factsOf(after, isDay)) left.set(fact, (left.get(fact) ?? 0) + 1);
  for (const fact of factsOf(before, isDay)) {
    const count = left.get(fact) ?? 0;
    if (count === 0) return false;
    left.set(fact, count - 1);
  }
  return (
    before.findLast(({ kind }) => kind === 'mark')?.text ===
    after.findLast(({ kind }) => kind === 'mark')?.text
  );
}

function factsOf(words: readonly Word[], isDay: boolean): string[] {
  return words.flatMap(({ kind, lower, text }) => {
    if (isDay && WEEKDAY.test(lower)) return [];
    if (kind === 'name' || kind === 'number' || /\d/.test(text) || TURNS.test(lower))
      return [lower.replace(/'s$/, '')];
    return kind === 'mark' && /^["“”?$%€£]$/.test(text) ? [text] : [];
  });
}

/**
 * Returns whether the next text refers to something that was removed: by the same word, or by a pronoun such as “it” or
 * “they” at its beginning.
 */
export function isSpokenOf(removed: readonly Word[], next: string): boolean {
  if (next === '') return false;
  const things = removed.filter(({ kind }) => kind === 'noun');
  const later = next.toLowerCase();
  const isNamed = things.some(
    ({ lower }) => lower.length > 3 && later.includes(lower.replace(/(?:es|s)$/, '')),
  );
  return isNamed || (things.length > 0 && /^["“]?(?:it|they|this|these|those|that|such|both)\b/i.test(next));
}
