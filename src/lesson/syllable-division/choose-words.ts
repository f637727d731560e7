import type { PatternId, Syllable, SyllableType, Unit } from '../../analyze/types.ts';
import { markWord } from '../../marks/mark-word.ts';
import { fitWords, oneOfFamily } from '../fit-words.ts';
import type { LessonInput } from '../lesson-input.ts';
import type { Picker } from '../picker.ts';
import type { ListedWord } from '../word-lists/listed-words.ts';

/** The number of words in ten that practise the lesson's patterns, where there are enough such words. */
const FOCUS_IN_TEN = 7;
/** Of ten words, at most this many are words with an ending that do not practise the lesson's patterns. */
const BUILT_IN_TEN = 3;
const NAMES: Readonly<Record<SyllableType, string>> = {
  closed: 'closed',
  open: 'open',
  vce: 'vowel-consonant-e',
  team: 'vowel team',
  'r-controlled': 'r-controlled',
  'consonant-le': 'consonant-le',
  other: 'other',
};

/**
 * Chooses words of two or more syllables for pupils to divide. Pupils know the words. The syllables of each word
 * together spell it, and every syllable has a vowel letter and a named type. Most are base words (rabbit, lantern), and
 * a few have an ending.
 */
export function chooseWordsToDivide(input: LessonInput, count: number, picker: Picker): ListedWord[] {
  const divisible = fitWords(input).filter((word) => isDivisible(word) && isPlainlyMarked(word, input));
  const taught = divisible.filter((word) => areTypesTaught(word, input));
  const all = isOnSyllables(input) && oneOfFamily(taught).length >= count ? taught : divisible;
  const fit = oneOfFamily(all);
  const ours = oneOfFamily(all.filter(({ requires }) => requires.some((id) => input.focus.includes(id))));
  const bare = (words: readonly ListedWord[]): ListedWord[] => words.filter(({ built }) => !built);
  const isEnding = ours.length > 0 && bare(ours).length === 0;
  const first = picker.pickEarly(
    isEnding || bare(ours).length < 3 ? ours : bare(ours),
    Math.ceil((count * FOCUS_IN_TEN) / 10),
  );
  const taken = [...first];
  const add = (words: readonly ListedWord[], most: number): void => {
    const left = words.filter(({ family }) => !taken.some((word) => word.family === family));
    taken.push(...picker.pickEarly(left, Math.max(0, Math.min(most, count - taken.length))));
  };
  add(bare(fit), count);
  add(fit, Math.ceil((count * BUILT_IN_TEN) / 10));
  return taken.sort((a, b) => a.syllables - b.syllables);
}

const TYPE_IDS: Readonly<Partial<Record<SyllableType, PatternId>>> = {
  open: 'type-open',
  vce: 'type-vce',
  team: 'type-team',
  'r-controlled': 'type-r',
  'consonant-le': 'consonant-le',
};

/**
 * Whether a lesson is on syllables. In such a lesson no word has a syllable type that is taught later. A lesson on aw
 * may have author.
 */
export function isOnSyllables({ focus }: LessonInput): boolean {
  return focus.some((id) => /^(?:type-|syllables-)/.test(id));
}

/**
 * Whether every syllable of a word is of a type that is not taught later in the sequence. False for begin before open
 * syllables, because of its be.
 */
export function areTypesTaught({ reading }: ListedWord, { group, sequence }: LessonInput): boolean {
  const later = sequence?.steps.slice(group.step).flatMap(({ teaches }) => teaches) ?? [];
  return reading.syllables.every(({ type }) => {
    const id = TYPE_IDS[type];
    return id === undefined || !later.includes(id) || group.alsoTaught.includes(id);
  });
}

/** Returns the types of a word's syllables for the key: `closed, open`. */
export function typesOf(syllables: readonly Syllable[]): string {
  return syllables.map(({ type }) => NAMES[type]).join(', ');
}

/** Macron and breve, as combining characters. */
const LONG_MARK = '\u0304';
const SHORT_MARK = '\u0306';
/** The most syllables that can be marked in a row of a table. */
const MOST_SYLLABLES = 4;
const LONGEST = 11;
const LONGEST_BUILT = 10;

/**
 * Whether the marks agree with what pupils are taught of syllables: no short vowel in an open syllable (the second of
 * facility), no long vowel in a closed syllable (chamber).
 */
function isBorneOut(word: string, reading: ListedWord['reading']): boolean {
  const marked = markWord(word, reading)
    .map(({ text }) => text.normalize('NFD'))
    .join('')
    .split('·');
  return (
    marked.length === reading.syllables.length &&
    reading.syllables.every(({ text, type }, i) => {
      // The e is dropped or is no sign of a long vowel: lat·er, mus·tache.
      if (type === 'vce' && !/e[sd]?$/.test(text)) return false;
      if (type === 'closed' && /[^aeiou]e$/.test(text)) return false;
      if (type === 'open') return !marked[i]!.includes(SHORT_MARK);
      return type !== 'closed' || !marked[i]!.includes(LONG_MARK);
    })
  );
}

/** Returns whether a vowel is pronounced weakly, so that it has no mark: the a of about, the e of begin. */
const isWeak = ({ sound, pattern }: Unit): boolean =>
  /^(?:AX|IX)|\.(?:AX|IX)/.test(sound) || pattern === 'weak-e';
/** First syllables before a strong syllable, with an e that some pronounce long and others short: report, release. */
const UNSURE_E = /^(?:re|be|de|pre|e)$/;

/**
 * Whether each vowel has, in any dictionary, the mark that its syllable leads pupils to expect: long in an open
 * syllable, short in a closed one, none where the vowel is weak.
 * - False for along (aw to many), confuse and doing.
 * - False for polite and report, whose first vowels are pronounced in two ways. In a lesson on weak o polite is
 * allowed.
 * - False for agree before weak a is taught, and in a lesson on open syllables.
 */
export function isPlainlyMarked(
  { word, reading }: ListedWord,
  { focus, known }: Pick<LessonInput, 'focus' | 'known'>,
): boolean {
  const marked = markWord(word, reading)
    .map(({ text }) => text.normalize('NFD'))
    .join('')
    .split('·');
  const vowels = reading.units.filter(({ sound }) => /(?:^|\.)[AEIOU]/.test(sound));
  if (vowels.length !== marked.length) return false;
  return reading.syllables.every(({ text, type }, i) => {
    const unit = vowels[i]!;
    const syllable = { text, unit, marked: marked[i]!, isFirst: i === 0, next: vowels[i + 1] };
    if (type === 'closed') return isPlainlyClosed(syllable);
    if (type === 'team') return !isWeak(unit) || focus.includes(unit.pattern);
    return type !== 'open' || isPlainlyOpen(syllable, { focus, known });
  });
}

/** A syllable with its vowel, its marks, and the vowel of the next one. */
interface MarkedSyllable {
  readonly text: string;
  readonly unit: Unit;
  readonly marked: string;
  readonly isFirst: boolean;
  readonly next: Unit | undefined;
}

/** The ter of interrupt is no closed syllable to a teacher. */
function isPlainlyClosed({ text, unit, marked, isFirst }: MarkedSyllable): boolean {
  return marked.includes(SHORT_MARK) || (!isFirst && isWeak(unit) && !/[aeiou]r$/.test(text));
}

function isPlainlyOpen(
  { text, unit, marked, isFirst, next }: MarkedSyllable,
  { focus, known }: Pick<LessonInput, 'focus' | 'known'>,
): boolean {
  const isLong = marked.includes(LONG_MARK);
  if (text.endsWith('o') && !isLong) return unit.pattern === 'schwa-o' && focus.includes('schwa-o');
  if (isFirst && isLong && UNSURE_E.test(text) && next && !isWeak(next)) return false;
  if (isLong || text.endsWith('y')) return true;
  return isWeak(unit) && known.knows(unit.pattern) && !focus.includes('type-open');
}

/**
 * Whether pupils can divide a word by what they are taught of syllables. No cut may separate a soft c or g from the
 * letter that softens it: danc·es.
 */
export function isDivisible({ word, built, syllables, reading }: ListedWord): boolean {
  const parts = reading.syllables;
  return (
    syllables >= 2 &&
    syllables <= MOST_SYLLABLES &&
    word.length <= (built ? LONGEST_BUILT : LONGEST) &&
    parts.length === syllables &&
    parts.map(({ text }) => text).join('') === word &&
    parts.every(({ text, type }) => /[aeiouy]/.test(text) && type !== 'other') &&
    !reading.units.some(({ pattern }) => pattern === 'irregular') &&
    !parts.some(({ text }, i) => /[cg]$/.test(text) && /^[eiy]/.test(parts[i + 1]?.text ?? '')) &&
    isBorneOut(word, reading)
  );
}
