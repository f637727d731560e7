import type { GroupOptions, SchwaPolicy } from '../analyze/types.ts';

/** What may be chosen for weak vowels. */
export const WEAK_VOWELS: readonly (readonly [policy: SchwaPolicy, says: string])[] = [
  ['flex', 'known when their spelling is taught in a full vowel'],
  ['taught', 'always known'],
  ['strict', 'known only when taught as such'],
];

/** What may be chosen for the longest base word; nothing is chosen with ''. */
export const LONGEST_WORDS: readonly (readonly [count: string, says: string])[] = [
  ['', 'as the steps say'],
  ['1', 'one syllable'],
  ['2', 'two syllables'],
  ['3', 'any number of syllables'],
];

/** How a group's words are judged, a sentence for each option, for a sheet where nothing can be chosen. */
export function describeOptions(options: GroupOptions): string[] {
  const { schwa = 'flex', shortOMerged = true, wh, blends, syllableTypes, irregularForms } = options;
  return [
    `Weak vowels, like the a of about, are ${namedBy(WEAK_VOWELS, schwa)}.`,
    blends === 'free' ? 'Blends (st, mp) are known with their letters.' : 'Blends (st, mp) must be taught.',
    syllableTypes === 'counted'
      ? 'Syllable types of longer words must be taught.'
      : 'Syllable types of longer words need not be taught.',
    wh === 'free' ? 'The wh of whale is known with w.' : 'The wh of whale must be taught.',
    irregularForms === 'free'
      ? 'Irregular forms come with their by-sight word (went with go).'
      : 'Irregular forms of by-sight words must be taught (went, with go by sight).',
    shortOMerged ? 'The o of dog counts as short o.' : 'The o of dog counts as its own sound, like aw.',
    `Longest base word: ${namedBy(LONGEST_WORDS, longest(options))}.`,
  ];
}

/** Three syllables or more set no limit. */
function longest({ maxSyllables }: GroupOptions): string {
  return maxSyllables === undefined ? '' : String(Math.min(maxSyllables, 3));
}

function namedBy(names: readonly (readonly [string, string])[], value: string): string {
  return names.find(([key]) => key === value)?.[1] ?? value;
}
