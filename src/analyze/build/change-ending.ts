import type { SpellingChange } from '../types.ts';
import type { WordSpelling } from './built-word.ts';

/** Vowel teams that keep their e before an ending with an initial e: agreed is agree + d. */
const TEAM_WITH_E = /^(ee|ie|oe|ue|ye|eye|owe)$/;

export interface ChangedEnding {
  readonly base: readonly WordSpelling[];
  /** The letters left for the suffix. */
  readonly suffix: string;
}

/**
 * Returns the possible spellings of a base before a suffix, the likeliest first. The letters of the word decide which
 * of them is meant.
 *
 * - hop, double: h-o-pp
 * - hope, drop-e: h-o-p, where the o still spells `o_e`
 * - pony, y-to-i: p-o-n-i, where the i spells `y`
 * - agree + ed: a-g-r-ee + d
 * - leaf, f-to-v: l-ea-v
 *
 * In die + ing the y spells itself.
 */
export function changeEnding(
  base: readonly WordSpelling[],
  change: SpellingChange,
  suffix: string,
): Iterable<ChangedEnding> {
  const last = base.at(-1);
  return last ? WAYS[change]({ base, last, front: base.slice(0, -1), suffix }) : [];
}

/** A base before a suffix. */
interface Ending {
  readonly base: readonly WordSpelling[];
  readonly last: WordSpelling;
  /** The base without its last spelling. */
  readonly front: readonly WordSpelling[];
  readonly suffix: string;
}

const WAYS: Readonly<Record<SpellingChange, (ending: Ending) => Iterable<ChangedEnding>>> = {
  *none({ base, last, front, suffix }) {
    const { letters } = last;
    yield { base, suffix };
    if (letters.endsWith('c')) yield { base: [...front, respelt(last, `${letters}k`)], suffix };
    if (/(.)\1$/.test(letters)) yield { base: [...front, respelt(last, letters.slice(0, -1))], suffix };
    if (suffix === 'ly' && letters === 'l') yield { base: front, suffix };
  },
  *double({ last, front, suffix }) {
    yield { base: [...front, respelt(last, last.letters + last.letters.at(-1))], suffix };
  },
  *'y-to-i'({ last, front, suffix }) {
    const { letters } = last;
    if (letters.endsWith('y')) yield { base: [...front, respelt(last, `${letters.slice(0, -1)}i`)], suffix };
  },
  *'drop-e'({ base, last, front, suffix }) {
    const { letters, sound } = last;
    if (TEAM_WITH_E.test(letters) && suffix.startsWith('e')) yield { base, suffix: suffix.slice(1) };
    if (letters === 'le' && suffix === 'ly') yield { base: front, suffix };
    if (letters === 'ie') yield { base: [...front, respelt(last, 'y', 'y')], suffix };
    if (letters === 'e' && sound === '-') yield { base: front, suffix };
    const split = base.findLastIndex((one) => one.letters[1] === '_');
    if (split !== -1) {
      const vowel = base[split]!;
      const left = { letters: vowel.letters[0]!, sound: vowel.sound, spells: vowel.letters };
      yield { base: base.with(split, left), suffix };
    }
    if (letters.endsWith('e')) {
      const short = respelt(last, letters.slice(0, -1));
      yield { base: [...front, { ...short, ...beforeVowel(last, suffix) }], suffix };
    }
  },
  *'f-to-v'({ last, front, suffix }) {
    const { letters, sound } = last;
    if (!letters.endsWith('f')) return;
    const text = `${letters.slice(0, -1)}v`;
    yield { base: [...front, { ...respelt(last, text, text), sound: sound.replace(/F$/, 'V') }], suffix };
  },
};

/** Returns a spelling with other letters. The spelling keeps its pattern unless `as` gives another pattern. */
function respelt(last: WordSpelling, letters: string, as = last.spells ?? last.letters): WordSpelling {
  const { spells: _, ...kept } = last;
  return { ...kept, letters, ...(as === letters ? {} : { spells: as }) };
}

/**
 * Returns the changed sound of -le and -re before a vowel, where they are no longer a syllable: juggling, central. The
 * sound stays the same before -ed and -es: juggled.
 */
function beforeVowel({ letters, sound }: WordSpelling, suffix: string): Partial<WordSpelling> {
  if (!/^[aeiouy]/.test(suffix) || /^e[ds]$/.test(suffix)) return {};
  if (letters === 'le' && sound === 'AX.L') return { sound: 'L', said: sound };
  return letters === 're' && sound === 'ER' ? { sound: 'R', said: sound } : {};
}
