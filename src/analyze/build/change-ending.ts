import type { SpellingChange } from '../types.ts';
import type { WordSpelling } from './built-word.ts';

/** Vowel teams that keep their e before an ending that starts with e: agreed is agree + d. */
const TEAM_WITH_E = /^(ee|ie|oe|ue|ye)$/;

export interface ChangedEnding {
  readonly base: readonly WordSpelling[];
  /** The letters of the suffix that are left for it. */
  readonly suffix: string;
}

/**
 * The ways the spellings of a base may stand before a suffix, the likeliest first; which one is meant, the
 * letters of the word tell.
 *
 * hop, double: h-o-pp; hope, drop-e: h-o-p, the o still spelling `o_e`; pony, y-to-i: p-o-n-i, the i spelling
 * `y`; agree + ed: a-g-r-ee + d. Not so for die + ing, whose y spells itself.
 */
export function* changeEnding(
  base: readonly WordSpelling[],
  change: SpellingChange,
  suffix: string,
): Generator<ChangedEnding> {
  const last = base.at(-1);
  if (!last) return;
  const front = base.slice(0, -1);
  const { letters, sound } = last;
  const spells = last.spells ?? letters;
  const replaced = (text: string, as = spells): WordSpelling[] => [
    ...front,
    { letters: text, sound, ...(as === text ? {} : { spells: as }) },
  ];
  switch (change) {
    case 'none':
      yield { base, suffix };
      if (letters.endsWith('c')) yield { base: replaced(`${letters}k`), suffix };
      if (/(.)\1$/.test(letters)) yield { base: replaced(letters.slice(0, -1)), suffix };
      if (suffix === 'ly' && letters === 'l') yield { base: front, suffix };
      return;
    case 'double':
      yield { base: replaced(letters + letters.at(-1)), suffix };
      return;
    case 'y-to-i':
      if (letters.endsWith('y')) yield { base: replaced(`${letters.slice(0, -1)}i`), suffix };
      return;
    case 'drop-e': {
      if (TEAM_WITH_E.test(letters) && suffix.startsWith('e')) yield { base, suffix: suffix.slice(1) };
      if (letters === 'le' && suffix === 'ly') yield { base: front, suffix };
      if (letters === 'ie') yield { base: replaced('y', 'y'), suffix };
      if (letters === 'e' && sound === '-') yield { base: front, suffix };
      const split = base.findLastIndex((one) => one.letters[1] === '_');
      if (split !== -1) {
        const vowel = base[split]!;
        yield {
          base: base.with(split, { letters: vowel.letters[0]!, sound: vowel.sound, spells: vowel.letters }),
          suffix,
        };
      }
      if (letters.endsWith('e')) yield { base: replaced(letters.slice(0, -1)), suffix };
      return;
    }
  }
}
