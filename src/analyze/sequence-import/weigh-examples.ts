import { catalogue } from '../catalogue/catalogue.ts';
import type { PatternId } from '../types.ts';
import type { Spelled } from './clause-chunk.ts';
import { patternsInExample } from './example-shapes.ts';
import { isUsualExample } from './example-words.ts';
import { fits, isWithin } from './fits.ts';
import type { Phrase } from './phrases.ts';
import type { WordNeeds } from './word-needs.ts';

/** The content of the other cells in a row. */
export interface Beside {
  readonly examples: readonly string[];
  /** Headings for which these letters may be a list: "Long e" beside `ee, ea`. */
  readonly headings: readonly Phrase[];
  readonly needs: WordNeeds;
  /**
   * Whether this is one of the steps at the start that only go over earlier content, or the first step after them.
   * Content that such a step goes over was taught before the plan, so the group knows it.
   */
  readonly first?: boolean;
  /** Matches the brackets in which the plan lists its by-sight words. */
  readonly mark?: RegExp;
  /** Letters that occur more than once in the plan, each time with their own examples. */
  readonly apart?: ReadonlySet<string>;
}

/** Senses that a word beside letters suggests although nobody means them: the weak ones, and the o of dog. */
const weak = new Set([...catalogue.filter(({ family }) => family === 'schwa').map(({ id }) => id), 'o-aw']);

/** The most examples that are considered. Further examples tell nothing more about the letters. */
const MOST_EXAMPLES = 24;

/**
 * Returns the patterns of `left` that the examples of letters show. The examples are the letters' own or those in cells
 * beside them.
 */
export function patternsShown(
  { spelling, examples }: Spelled,
  left: readonly PatternId[],
  beside: Beside,
  others: readonly Spelled[],
): ReadonlySet<PatternId> {
  // The word boxes is no example of -s beside -es, and rain is no example of a beside ai.
  const longer = others.filter((other) => isWithin(spelling.letters, other.spelling.letters));
  const shown = (examples.length > 0 ? examples : beside.examples)
    .slice(0, MOST_EXAMPLES)
    .filter((word) => !longer.some((other) => fits(word, other.spelling.letters)));
  const ids = new Set(
    shown.flatMap((word) => {
      const needs = beside.needs(word);
      const listed = left.filter((id) => needs.has(id) || isUsualExample(word, id));
      // The al of palm equals the al of walk only for people who pronounce both alike.
      const own = listed.includes('al-ah') ? listed.filter((id) => id !== 'al-aw') : listed;
      return own.length > 0 ? own : patternsInExample(spelling.letters, word);
    }),
  );
  // For a reader the y of candy and the y of windy are the same.
  if (ids.has('suffix-y') && left.includes('y-long-e') && !spelling.usual.includes('suffix-y'))
    ids.add('y-long-e');
  if (ids.has('y-long-e')) ids.delete('suffix-y');
  // The u of umbrella is short unless the text speaks of weak vowels.
  const plain = [...ids].filter((id) => !weak.has(id));
  if (plain.length > 0 && plain.length < ids.size) return new Set(plain);
  return ids;
}

/**
 * Whether the examples of letters need the patterns the letters were read as.
 * - `confirms`: each example that the engine knows needs them.
 * - `contradicts`: one example has the letters but needs neither these patterns nor the possible meanings of letters
 * beside them.
 */
export function explains(
  spelled: Spelled,
  ids: readonly PatternId[],
  others: readonly Spelled[],
  needsOf: Beside['needs'],
): 'confirms' | 'contradicts' | 'says nothing' {
  const { spelling, examples } = spelled;
  let confirmed = false;
  for (const word of examples.slice(0, MOST_EXAMPLES)) {
    const needs = needsOf(word);
    if (needs.size === 0) continue;
    if (ids.some((id) => needs.has(id) || isUsualExample(word, id))) confirmed = true;
    else if (
      fits(word, spelling.letters) &&
      !others.some((other) => other !== spelled && other.spelling.candidates.some((id) => needs.has(id)))
    )
      return 'contradicts';
  }
  // An example of a single consonant proves almost nothing.
  return confirmed && (spelling.letters.length > 1 || /[aeiouycg]/.test(spelling.letters))
    ? 'confirms'
    : 'says nothing';
}
