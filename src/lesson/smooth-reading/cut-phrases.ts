import { standsBeforeName } from '../../analyze/index.ts';
import { isParticle, isPhrasal, type PhraseClass, phraseClass, takesTo } from './phrase-words.ts';

interface Word {
  /** As it stands between two spaces, with its marks. */
  readonly shown: string;
  readonly word: string;
  readonly is: PhraseClass;
}

/** A place where no reader stops. */
const NEVER = -20;
/** After these the phrase goes on: the | boat, with | a, was | coming. */
const GO_ON: ReadonlySet<PhraseClass> = new Set([
  'determiner',
  'subject',
  'preposition',
  'joiner',
  'clause',
  'relative',
  'helper',
  'degree',
]);
/** What a phrase of that many words costs: two to five are easily held in one breath (our own figure). */
const COST = [0, 1.4, 0.2, 0, 0, 0.4, 1.2, 2.2, 3.4];

/**
 * A sentence in phrases, as one reads it aloud smoothly: `The old ferry`, `came slowly`, `into the harbour.` Joined by a space
 * they are the sentence. Breaks stand at marks, before joining words and prepositions and after longer subjects,
 * weighed against phrases of one word and of more than five.
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

function readWords(sentence: string): Word[] {
  const words: Word[] = [];
  for (const shown of sentence.split(/\s+/).filter((each) => each !== '')) {
    const bare = shown.replace(/^[^\p{L}\p{N}]+|[^\p{L}\p{N}]+$/gu, '');
    const word = bare.toLowerCase();
    words.push({ shown, word, is: inPlace(word, phraseClass(bare, words.length === 0), words) });
  }
  return words;
}

/** What a word is behind those before it: it in saw it is no subject, row in we row and want to row a verb. */
function inPlace(word: string, is: PhraseClass, words: readonly Word[]): PhraseClass {
  const before = words.at(-1);
  if ((word === 'it' || word === 'you') && (before?.is === 'verb' || before?.is === 'preposition'))
    return 'object';
  if (is !== 'other' || !before) return is;
  const isDoing =
    /^(?:i|he|she|we|they)$/.test(before.word) ||
    (before.is === 'helper' && !/^(?:is|are|was|were|am|be|been|being|has|have|had)$/.test(before.word)) ||
    (before.word === 'to' && takesTo(words.at(-2)?.word ?? ''));
  return isDoing && !/ly$|^(?:then|first|all|still|also|now|always|often)$/.test(word) ? 'verb' : is;
}

/** How good a place the gap before word `i` is, from `NEVER` to 4. */
function weighBreak(words: readonly Word[], i: number): number {
  const before = words[i - 1]!;
  const here = words[i]!;
  const next = words[i + 1];
  if (before.shown.endsWith('.') && standsBeforeName(before.shown.slice(0, -1))) return NEVER;
  if (/[.!?…]["”’)]*$/.test(before.shown)) return 4;
  if (/[,;:–—]["”’)]*$/.test(before.shown) || /^[–—]/.test(here.shown)) {
    // A row of words for one thing: a cold, | wet night.
    return words[i - 2]?.is === 'determiner' && here.is === 'other' && next?.is === 'other' ? -2 : 3;
  }
  const closes = isParticle(before.word) && (i < 2 || words[i - 2]!.is !== 'determiner') && !opensThing(here);
  if (GO_ON.has(before.is) && !closes) return NEVER;
  switch (here.is) {
    case 'joiner':
      return weighJoiner(before, here, next, words[i + 2]);
    case 'clause':
      // As fast as a seal is one idea.
      return here.word === 'as' && words.slice(Math.max(0, i - 3), i).some(({ word }) => word === 'as')
        ? -3
        : 1.8;
    case 'relative':
      return here.word === 'that' && next !== undefined && !opensClause(next) ? -0.8 : 1.4;
    case 'preposition':
      return weighPreposition(words, i);
    case 'verb':
    case 'helper':
      return weighVerb(words, i);
    case 'subject':
      return before.is === 'verb' || /^(?:then|first|so)$/.test(before.word) ? -2 : 1.4;
    case 'determiner':
      if (before.is === 'verb' || before.word === 'not') return -1.2;
      if (before.is === 'object') return 0.5;
      return i > 1 && !words.slice(0, i).some(isAction) ? 1.4 : 0.3;
    case 'name':
      return before.is === 'other' && startsAside(words) && !words.slice(0, i).some(isAction) ? 1.4 : -1.2;
    default:
      return -1.6;
  }
}

/** Before and: a new doing or a new thing with its own the, not the second of two words (Otto and Bram, pulled and pulled). */
function weighJoiner(before: Word, { word }: Word, next: Word | undefined, then: Word | undefined): number {
  if (word === 'but') return 2;
  if (next === undefined || next.word === before.word) return NEVER;
  if (isAction(next) || opensClause(next)) return 1.6;
  return then !== undefined && isAction(then) && next.is === 'other' && before.is !== 'name' ? 0.6 : -0.8;
}

function weighPreposition(words: readonly Word[], i: number): number {
  const before = words[i - 1]!;
  const { word } = words[i]!;
  const next = words[i + 1];
  if (isPhrasal(before.word, word)) return -3;
  if (isParticle(word) && (next === undefined || !opensThing(next) || /[,.!?;:]/.test(words[i]!.shown)))
    return -2.5;
  if (word === 'of') return -1;
  if (next !== undefined && (next.is === 'object' || next.is === 'subject')) return -1;
  if (word === 'to') {
    if (takesTo(before.word)) return -3;
    if (/^(?:close|next|near|on)$/.test(before.word)) return -2;
    if (next !== undefined && !opensThing(next)) return 0.2;
  }
  if (isParticle(before.word)) return opensBare(next) ? -0.8 : 0.2;
  // The lamp in the lighthouse; he ran up the steps: a short beginning goes on.
  if (!words.slice(0, i).some(isAction)) return -0.3;
  const starter = words[i - 2]?.is;
  if (isAction(before) && (starter === 'relative' || starter === 'subject' || starter === 'joiner'))
    return -0.5;
  // Down to sea, covered with weed.
  return opensBare(next) ? 0.1 : 0.9;
}

/** A single word that ends its sentence or its part of one: to sea. */
function opensBare(word: Word | undefined): boolean {
  return word?.is === 'other' && /\p{P}$/u.test(word.shown);
}

/** After a subject of three words and more: The old ferry | came; hardly after shorter ones. */
function weighVerb(words: readonly Word[], i: number): number {
  let start = i;
  while (start > 0 && !isAction(words[start - 1]!) && !startsClause(words, start - 1)) start--;
  const subject = words.slice(start, i);
  if (subject.length === 0 || subject.at(-1)!.is === 'subject') return -2;
  if (subject.length === 1) return -1.5;
  return subject.length > 2 ? 1.1 : -0.4;
}

/** Where a subject begins at the latest: after But at a sentence's start; the and of Otto and Bram is within it. */
function startsClause(words: readonly Word[], i: number): boolean {
  const { is } = words[i]!;
  if (is === 'joiner') return i === 0 || (i > 1 && words[i - 1]!.is !== 'name');
  return is === 'clause' || is === 'relative';
}

/** A sentence that begins with when or where: In the morning, If the wind drops. */
function startsAside(words: readonly Word[]): boolean {
  const { is } = words[0]!;
  return is === 'preposition' || is === 'clause';
}

function isAction({ is }: Word): boolean {
  return is === 'verb' || is === 'helper';
}

function opensThing({ is }: Word): boolean {
  return is === 'determiner' || is === 'object' || is === 'name' || is === 'other' || is === 'subject';
}

function opensClause({ is }: Word): boolean {
  return is === 'determiner' || is === 'subject' || is === 'verb' || is === 'helper' || is === 'clause';
}
