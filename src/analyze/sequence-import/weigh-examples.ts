import { catalogue } from '../catalogue/catalogue.ts';
import type { PatternId } from '../types.ts';
import type { Spelled } from './clause-chunk.ts';
import { patternsInExample } from './example-shapes.ts';
import { isUsualExample } from './example-words.ts';
import { fits, isWithin } from './fits.ts';
import type { Phrase } from './phrases.ts';
import type { WordNeeds } from './word-needs.ts';

/** What stands in other cells of a row. */
export interface Beside {
  readonly examples: readonly string[];
  /** Headings that these letters may be a list of: "Long e", beside `ee, ea`. */
  readonly headings: readonly Phrase[];
  readonly needs: WordNeeds;
  /** The first step of all: what it goes over was taught before, so the group has it. */
  readonly first?: boolean;
  /** Brackets in which the plan has its by-sight words. */
  readonly mark?: RegExp;
  /** Letters that stand more than once in the plan, each time with examples of their own. */
  readonly apart?: ReadonlySet<string>;
}

/** Senses that a word beside letters suggests without anybody meaning them: the weak ones, and the o of dog. */
const weak = new Set([...catalogue.filter(({ family }) => family === 'schwa').map(({ id }) => id), 'o-aw']);

/** Examples beyond these say nothing more of what letters mean. */
const MOST_EXAMPLES = 24;

/** The patterns of `left` that the examples of letters show, their own or those beside them. */
export function patternsShown(
  { spelling, examples }: Spelled,
  left: readonly PatternId[],
  beside: Beside,
  others: readonly Spelled[],
): ReadonlySet<PatternId> {
  // boxes is no example of -s beside -es, nor rain of a beside ai.
  const longer = others.filter((other) => isWithin(spelling.letters, other.spelling.letters));
  const shown = (examples.length > 0 ? examples : beside.examples)
    .slice(0, MOST_EXAMPLES)
    .filter((word) => !longer.some((other) => fits(word, other.spelling.letters)));
  const ids = new Set(
    shown.flatMap((word) => {
      const needs = beside.needs(word);
      const listed = left.filter((id) => needs.has(id) || isUsualExample(word, id));
      // The al of palm is that of walk only to whoever says both alike.
      const own = listed.includes('al-ah') ? listed.filter((id) => id !== 'al-aw') : listed;
      return own.length > 0 ? own : patternsInExample(spelling.letters, word);
    }),
  );
  // The y of candy and of windy is one to a reader.
  if (ids.has('suffix-y') && left.includes('y-long-e') && !spelling.usual.includes('suffix-y'))
    ids.add('y-long-e');
  if (ids.has('y-long-e')) ids.delete('suffix-y');
  // The u of umbrella is short wherever nothing speaks of weak vowels.
  const plain = [...ids].filter((id) => !weak.has(id));
  if (plain.length > 0 && plain.length < ids.size) return new Set(plain);
  return ids;
}

/**
 * Whether the examples given with letters need what the letters were read as. `confirms`: each that the engine knows
 * does; `contradicts`: one has the letters and needs neither this nor what letters beside them may mean.
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
  // That a word has one consonant says next to nothing.
  return confirmed && (spelling.letters.length > 1 || /[aeiouycg]/.test(spelling.letters))
    ? 'confirms'
    : 'says nothing';
}
