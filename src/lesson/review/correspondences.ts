import { catalogue } from '../../analyze/index.ts';
import type { Pattern, PatternId } from '../../analyze/types.ts';

/** Families whose rows are letters for a sound. The other families are syllables, endings, changes and blends. */
const FAMILIES: ReadonlySet<string> = new Set([
  'consonant',
  'double consonant',
  'digraph',
  'short vowel',
  'vowel-consonant-e',
  'long vowel',
  'other vowel',
  'vowel team',
  'r-controlled vowel',
  'soft c and g',
  'silent letter',
  'consonant-le',
  'schwa',
]);

/**
 * The pattern of a consonant with a silent e behind a vowel team (the se of cheese, the pe of swoop). It has the
 * letters of many consonants, so it is neither a card nor a way to spell one sound.
 */
const SILENT_E = 'silent-e';

/** The rows of the catalogue that are letters for a sound: ai as in rain; not -ing, nor the st of stop. */
export const correspondences: readonly Pattern[] = catalogue.filter(
  ({ id, family }) => FAMILIES.has(family) && id !== SILENT_E,
);

const byId = new Map(correspondences.map((row) => [row.id, row]));

/** Returns the row of a pattern if the row is letters for a sound. */
export function correspondenceOf(id: PatternId): Pattern | undefined {
  return byId.get(id);
}

/** Returns the sound that a teacher hears. The weak i of engine and the i of fish are heard as one. */
export function heardAs(sound: string): string {
  return sound === 'IX' ? 'IH' : sound;
}
