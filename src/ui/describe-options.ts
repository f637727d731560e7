import type { Accent, GroupOptions, SchwaPolicy } from '../analyze/types.ts';
import { say } from '../wording/say.ts';

/** The choices for weak vowels. */
export function weakVowels(): readonly (readonly [policy: SchwaPolicy, says: string])[] {
  return [
    ['flex', say('ui.weakFlex')],
    ['taught', say('ui.weakTaught')],
    ['strict', say('ui.weakStrict')],
  ];
}

/** The choices for the a of bath in British English. */
export function bathVowels(): readonly (readonly [vowel: 'father' | 'cat', says: string])[] {
  return [
    ['father', say('ui.bathFather')],
    ['cat', say('ui.bathCat')],
  ];
}

/** The choices for the longest base word; '' sets none. */
export function longestWords(): readonly (readonly [count: string, says: string])[] {
  return [
    ['', say('ui.longestBySteps')],
    ['1', say('ui.longestOne')],
    ['2', say('ui.longestTwo')],
    ['3', say('ui.longestAny')],
  ];
}

/** Describes the way a group's words are judged, one sentence for each option, for a sheet without choices. */
export function describeOptions(options: GroupOptions, accent: Accent = 'american'): string[] {
  const {
    schwa = 'flex',
    shortOMerged = true,
    wh,
    blends,
    syllableTypes,
    divisions,
    endings,
    irregularForms,
    bath = 'father',
  } = options;
  return [
    say('ui.weakAre', { how: namedBy(weakVowels(), schwa) }),
    blends === 'free' ? say('ui.blendsFree') : say('ui.blendsCounted'),
    syllableTypes === 'counted' ? say('ui.syllableTypesCounted') : say('ui.syllableTypesFree'),
    divisions === 'counted' ? say('ui.divisionsCounted') : say('ui.divisionsFree'),
    endings === 'units' ? say('ui.endingsUnits') : say('ui.endingsParts'),
    wh === 'free' ? say('ui.whFree') : say('ui.whCounted'),
    irregularForms === 'free' ? say('ui.irregularFormsFree') : say('ui.irregularFormsCounted'),
    shortOMerged ? say('ui.shortOMerged') : say('ui.shortOApart'),
    ...(accent === 'british' ? [say('ui.bathIs', { how: namedBy(bathVowels(), bath) })] : []),
    say('ui.longestIs', { how: namedBy(longestWords(), longest(options)) }),
    ...(options.soundMarks === 'ipa' ? [say('ui.soundsInIpa')] : []),
  ];
}

/** Returns the chosen limit. Three syllables or more mean no limit. */
function longest({ maxSyllables }: GroupOptions): string {
  return maxSyllables === undefined ? '' : String(Math.min(maxSyllables, 3));
}

function namedBy(names: readonly (readonly [string, string])[], value: string): string {
  return names.find(([key]) => key === value)?.[1] ?? value;
}
