import { SHORT_SUBJECT } from './kind-rules.ts';
import type { Word } from './types.ts';

/** A clause, given by the indexes of its words. The subject runs from `start` to before `verb`, apart from adverbs. */
export interface Clause {
  readonly start: number;
  readonly subjectEnd: number;
  readonly verb: number;
}

/** The least certainty that a word is a verb. */
const SURE = 0.8;
const END = /^[.!?…”"]$/;

/** Returns the clause whose subject begins at `start`, or null if there is no plain subject with a verb after it. */
export function findClause(words: readonly Word[], start: number): Clause | null {
  const subjectEnd = endOfSubject(words, start);
  if (subjectEnd === null) return null;
  if (SHORT_SUBJECT.test(words[start]!.lower)) return { start, subjectEnd, verb: start };
  let verb = subjectEnd;
  while (words[verb]?.kind === 'adverb' || words[verb]?.lower === 'never') verb++;
  return isFiniteVerb(words, verb) ? { start, subjectEnd, verb } : null;
}

/** Returns whether the word is a finite verb after its subject. */
export function isFiniteVerb(words: readonly Word[], at: number): boolean {
  const word = words[at];
  if (!word || word.isInside) return false;
  if (word.kind === 'helper') return !/^(?:be|been|being)$/.test(word.lower);
  if (word.kind !== 'verb' || word.sure < SURE) return false;
  if (word.form === 'past' || word.form === 's') return true;
  let before = at - 1;
  while (words[before]?.kind === 'adverb') before--;
  const subject = words[before];
  if (word.form !== 'base' || !subject) return false;
  return (
    /^(?:i|you|we|they)$/.test(subject.lower) ||
    (subject.kind === 'noun' && /[^s]s$/.test(subject.lower) && word.sure > 0.9)
  );
}

/** Returns the end of a plain subject: a pronoun, a name, or “the old boat by the quay”. Returns null if there is none. */
export function endOfSubject(words: readonly Word[], start: number): number | null {
  const first = words[start];
  if (!first || first.isInside) return null;
  if (first.kind === 'subject' || first.kind === 'pronoun') return start + 1;
  if (/^(?:this|that|these|those|all|some|both|others|one)$/.test(first.lower)) {
    const next = words[start + 1];
    if (next && (next.kind === 'helper' || next.kind === 'verb')) return start + 1;
  }
  let at = endOfThing(words, start);
  if (at === null) return null;
  // “Otto and Bram”, “the boat and its crew”.
  if (words[at]?.lower === 'and') at = endOfThing(words, at + 1) ?? at;
  while (words[at]?.kind === 'preposition') {
    const end = endOfThing(words, at + 1);
    if (end === null) return at;
    at = end;
  }
  return at;
}

/** Returns the end of a noun phrase: “the old boat”, “Bram”, “boats”. Returns null if there is none. */
export function endOfThing(words: readonly Word[], start: number): number | null {
  let at = start;
  while (/^(?:determiner|possessive|number)$/.test(words[at]?.kind ?? '')) at++;
  let end: number | null = null;
  for (; at < words.length && !words[at]!.isInside; at++) {
    if (/^(?:noun|name)$/.test(words[at]!.kind)) end = at + 1;
    else if (!isWithinThing(words, at, end !== null)) break;
  }
  return end;
}

/**
 * Returns whether a word within a noun phrase is not its noun: “the wet boat”, “a flat-bottomed boat”, “the ferry's
 * horn”.
 */
function isWithinThing(words: readonly Word[], at: number, hasNoun: boolean): boolean {
  const { kind, form, lower, start, sure } = words[at]!;
  if (kind === 'adjective') return true;
  if (lower === '-') return start === words[at - 1]?.end;
  if (hasNoun) return kind === 'possessive' && /'/.test(lower);
  return kind === 'number' || (kind === 'verb' && form !== 'past' && form !== 's' && sure < 1);
}

/**
 * Returns the main clause of a sentence. The sentence may begin with the clause, or with And, Then, speech, or an
 * opening up to a comma: In the end, he ran; When it rained, he ran; “Row!” said Bram. Returns null if no main clause
 * is clearly there.
 */
export function findMainClause(words: readonly Word[]): Clause | null {
  let at = 0;
  if (words[0]?.kind === 'mark' && words[0].isInside) {
    while (words[at]?.isInside || /^[”"]$/.test(words[at]?.text ?? '')) at++;
    return findFrame(words, at);
  }
  if (/^(?:and|but|so|then|now|still|yet|soon|later|also|here|today)$/.test(words[at]?.lower ?? '')) at++;
  if (words[at]?.text === ',') at++;
  return findClause(words, at) ?? findBehindOpening(words, at);
}

/** Returns whether the words before the comma are a main clause by themselves. */
export function isWholeClause(words: readonly Word[], comma: number): boolean {
  const before = words.slice(0, comma);
  if (before.some(({ isInside, text }, i) => /^["“”]$/.test(text) && !isInside && !before[i - 1]?.isInside))
    return false;
  return findMainClause(before) !== null;
}

/** Returns the clause after speech: he said, said Bram. */
function findFrame(words: readonly Word[], at: number): Clause | null {
  const verb = words[at];
  if (verb?.kind === 'verb' && verb.form === 'past') {
    const subjectEnd = endOfSubject(words, at + 1);
    return subjectEnd === null ? null : { start: at + 1, subjectEnd, verb: at };
  }
  return findClause(words, at);
}

/** Returns the clause after an opening and its comma. The opening is a phrase, a clause with its own verb, or an adverb. */
function findBehindOpening(words: readonly Word[], start: number): Clause | null {
  const first = words[start];
  if (!first || !/^(?:preposition|clause|adverb|to)$/.test(first.kind)) return null;
  const [comma] = findMarks(words, /^,$/).filter((mark) => mark > start);
  return comma === undefined ? null : findClause(words, comma + 1);
}

/** Returns the indexes of the punctuation marks that divide a sentence, outside quotation marks and brackets. */
export function findMarks(words: readonly Word[], mark: RegExp): number[] {
  return words.flatMap((word, i) =>
    word.kind === 'mark' && !word.isInside && mark.test(word.text) ? [i] : [],
  );
}

/** Returns the index of the mark that ends the sentence, or the index after its last word. */
export function endOf(words: readonly Word[]): number {
  let end = words.length;
  while (end > 0 && words[end - 1]!.kind === 'mark' && END.test(words[end - 1]!.text)) end--;
  return end;
}

/** Not, never, didn't. */
export function isNot({ kind, lower }: Word): boolean {
  return kind === 'not' || /n't$/.test(lower);
}
