import type { SpellingChange } from '../types.ts';
import type { WordSpelling } from './built-word.ts';

/** Vowel teams that keep their e before an ending that starts with e: agreed is agree + d. */
const TEAM_WITH_E = /^(ee|ie|oe|ue|ye|eye|owe)$/;

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
 * `y`; agree + ed: a-g-r-ee + d; leaf, f-to-v: l-ea-v. Not so for die + ing, whose y spells itself.
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
  const replaced = (text: string, as = spells, heard: Partial<WordSpelling> = {}): WordSpelling[] => {
    const { spells: _, ...kept } = last;
    return [...front, { ...kept, letters: text, ...(as === text ? {} : { spells: as }), ...heard }];
  };
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
      if (letters.endsWith('e'))
        yield { base: replaced(letters.slice(0, -1), spells, beforeVowel(last, suffix)), suffix };
      return;
    }
    case 'f-to-v':
      if (letters.endsWith('f')) {
        const text = `${letters.slice(0, -1)}v`;
        yield { base: replaced(text, text, { sound: sound.replace(/F$/, 'V') }), suffix };
      }
      return;
  }
}

/** What -le and -re lose before a vowel, where they are no syllable any more: juggling, central; not juggled. */
function beforeVowel({ letters, sound }: WordSpelling, suffix: string): Partial<WordSpelling> {
  if (!/^[aeiouy]/.test(suffix) || /^e[ds]$/.test(suffix)) return {};
  if (letters === 'le' && sound === 'AX.L') return { sound: 'L', said: sound };
  return letters === 're' && sound === 'ER' ? { sound: 'R', said: sound } : {};
}
