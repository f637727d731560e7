import fc from 'fast-check';
import type {
  FineNeeds,
  FinerNeed,
  Group,
  GroupOptions,
  MadeOf,
  PartNeeds,
  Reading,
} from '../../src/analyze/types.ts';
import { groupOf } from './group.ts';
import { fakeAnalyzer } from './word-analyzer.ts';

/**
 * Words, groups, sequences and texts for testing laws. They are invented from few patterns, so that the same patterns
 * often occur together. The chosen patterns depend on options: weak vowels, short o, blends, syllable counts, endings,
 * irregular spelling, and finer rows of each kind.
 */
export const ids = [
  'm',
  's',
  'w',
  'wh',
  'short-a',
  'short-o',
  'o-aw',
  'schwa-a',
  'schwa-o',
  'long-o',
  'start-sm',
  'end-st',
  'type-open',
  'syllables-2',
  'syllables-3',
  'suffix-s',
  'change-drop-e',
  'possessive',
  'or',
  'or-weak',
  'contraction',
  'contraction-not',
  'rime-am',
  'divide-v-cv',
  'root-port',
  'irregular',
];
/** Finer rows, each with the rows that stand in for it. */
const FINER: readonly FinerNeed[] = [
  { row: 'contraction-not', of: ['contraction'] },
  { row: 'rime-am', of: ['short-a', 'm'] },
  { row: 'divide-v-cv', of: [] },
  { row: 'root-port', of: [] },
];
export const teachable = ids.filter((id) => id !== 'irregular');
const some = (from: readonly string[]) => fc.subarray([...from]);
export const word = fc.constantFrom(
  'mast',
  'moss',
  'toast',
  'sofa',
  'Otto',
  'otto',
  'Ines',
  'sailor',
  'masts',
);

const source = fc.constantFrom('dictionary', 'derived', 'rule', 'guess', 'none');
interface Needs {
  readonly requires: readonly string[];
  readonly fine?: FineNeeds;
}
const needs: fc.Arbitrary<Needs> = fc
  .record({ rest: some(ids), finer: fc.subarray([...FINER]) })
  .map(({ rest, finer }) => needsOf(rest, finer));
/** Returns the required patterns in both forms: as a plain list and with finer rows. */
function needsOf(rest: readonly string[], finer: readonly FinerNeed[]): Needs {
  const requires = [...new Set([...rest, ...finer.flatMap(({ of }) => of)])].sort();
  return finer.length > 0 ? { requires, fine: { rest, finer } } : { requires };
}
const whole = fc.record({ needs, source }).map(({ needs, source }) => ({ ...needs, source }));
const part = (madeOf: fc.Arbitrary<MadeOf | undefined>): fc.Arbitrary<PartNeeds> =>
  fc
    .record({ word: fc.constantFrom('mast', 'sofa', 'odd'), needs, madeOf })
    .map(({ word, needs, madeOf }) => (madeOf ? { word, ...unionOf(madeOf), madeOf } : { word, ...needs }));
const madeOf = (parts: fc.Arbitrary<PartNeeds>): fc.Arbitrary<MadeOf> =>
  fc
    .record({ parts: fc.array(parts, { minLength: 1, maxLength: 2 }), needs })
    .map(({ parts, needs: { requires, fine } }) => ({
      parts,
      joint: requires,
      ...(fine && { fineJoint: fine }),
    }));
/** Words built in two steps, such as unwanted from wanted from want. */
const made = madeOf(part(fc.option(madeOf(part(fc.constant(undefined))), { nil: undefined })));
const unionOf = ({ parts, joint, fineJoint }: MadeOf): Needs =>
  needsOf(
    [...parts.flatMap(({ requires, fine }) => fine?.rest ?? requires), ...(fineJoint?.rest ?? joint)],
    [...parts.flatMap(({ fine }) => fine?.finer ?? []), ...(fineJoint?.finer ?? [])],
  );
const reading: fc.Arbitrary<Partial<Reading> & Pick<Reading, 'requires'>> = fc.oneof(
  whole,
  fc.record({ madeOf: made, source }).map((one) => ({ ...one, ...unionOf(one.madeOf) })),
);
export const analyzer = fc
  .tuple(fc.dictionary(word, fc.array(reading, { maxLength: 3 })), fc.array(word))
  .map(([words, homographs]) => fakeAnalyzer(lowerKeys(words), homographs));

export const options: fc.Arbitrary<GroupOptions> = fc.record(
  {
    schwa: fc.constantFrom('taught', 'flex', 'strict'),
    shortOMerged: fc.boolean(),
    wh: fc.constantFrom('counted', 'free'),
    blends: fc.constantFrom('counted', 'free'),
    irregularForms: fc.constantFrom('counted', 'free'),
    syllableTypes: fc.constantFrom('counted', 'free'),
    divisions: fc.constantFrom('counted', 'free'),
    endings: fc.constantFrom('parts', 'units'),
    maxSyllables: fc.integer({ min: 1, max: 4 }),
  },
  { requiredKeys: [] },
);
const step = fc.record({ teaches: some(teachable), bySight: fc.array(word, { maxLength: 1 }) });
export const sequence = fc.array(step, { minLength: 1, maxLength: 4 }).map((steps) => ({
  id: 'made-up',
  name: 'Made up',
  source: 'test',
  licence: 'MIT',
  steps,
}));
export const group: fc.Arbitrary<Group> = fc
  .record({
    alsoTaught: some(teachable),
    notYet: some(teachable),
    bySight: fc.array(word, { maxLength: 2 }),
    names: fc.array(word, { maxLength: 2 }),
    skip: fc.array(word, { maxLength: 1 }),
    options,
  })
  .map(groupOf);
export const text = fc.array(fc.tuple(word, fc.integer({ min: 1, max: 9 })), { maxLength: 12 });

function lowerKeys<V>(words: Record<string, V>): Record<string, V> {
  return Object.fromEntries(Object.entries(words).map(([key, value]) => [key.toLowerCase(), value]));
}
