import fc from 'fast-check';
import type { Group, GroupOptions, MadeOf, PartNeeds, Reading } from '../../src/analyze/types.ts';
import { groupOf } from './group.ts';
import { fakeAnalyzer } from './word-analyzer.ts';

/**
 * Words, groups, sequences and texts for laws, invented from few patterns so that they meet often. The patterns are those
 * on which options hang: weak vowels, short o, blends, syllable counts, endings, and irregular spelling.
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
  'irregular',
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
const whole = fc.record({ requires: some(ids), source });
const part = (madeOf: fc.Arbitrary<MadeOf | undefined>): fc.Arbitrary<PartNeeds> =>
  fc
    .record({ word: fc.constantFrom('mast', 'sofa', 'odd'), requires: some(ids), madeOf })
    .map(({ word, requires, madeOf }) =>
      madeOf ? { word, requires: unionOf(madeOf), madeOf } : { word, requires },
    );
const madeOf = (parts: fc.Arbitrary<PartNeeds>): fc.Arbitrary<MadeOf> =>
  fc.record({ parts: fc.array(parts, { minLength: 1, maxLength: 2 }), joint: some(ids) });
/** Two steps of making, such as unwanted from wanted from want. */
const made = madeOf(part(fc.option(madeOf(part(fc.constant(undefined))), { nil: undefined })));
const unionOf = ({ parts, joint }: MadeOf): string[] =>
  [...new Set([...parts.flatMap(({ requires }) => requires), ...joint])].sort();
const reading: fc.Arbitrary<Partial<Reading> & Pick<Reading, 'requires'>> = fc.oneof(
  whole,
  fc.record({ madeOf: made, source }).map((one) => ({ ...one, requires: unionOf(one.madeOf) })),
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
