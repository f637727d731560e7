import { catalogue, soundsIn } from '../../analyze/index.ts';
import type { Reading, Unit } from '../../analyze/types.ts';
import { soundName } from '../../marks/sound-names.ts';
import type { KnownWords } from '../known-words.ts';

/**
 * Patterns of letters that are pronounced weakly, so that the letters do not show the sound: the a of about, the ar of
 * sugar.
 */
const UNSURE = /^irregular$|^schwa-|^weak-|-weak$/;

/** A by-sight word with its sounds under its letters. */
export interface MappedWord {
  /** The letters of each sound with a gap between. Letters to learn by heart are in brackets: `s [ai] d`. */
  readonly letters: string;
  /** `s · ĕ · d`. */
  readonly sounds: string;
  /** `ai says ĕ`; empty where the whole word follows the taught patterns. */
  readonly byHeart: string;
}

/**
 * Maps the letters of a word to its sounds. Letters are to be learnt by heart if the group was not taught their
 * pattern, or if they follow none. Returns null where letters and sounds do not fit together (one), so that the word is
 * learnt as a whole.
 */
export function mapLetters(word: string, reading: Reading, known: KnownWords): MappedWord | null {
  const units = withVowelE(reading.units, known);
  // No letter in the word one spells its w.
  if (units.some(({ letters, sound }) => /^[aeiou]+$/.test(letters) && sound.startsWith('W.'))) return null;
  const spelt = units.map(({ letters }) => letters.replace('_', '')).join('');
  const plain = units.every(({ letters }) => !letters.includes('_'));
  const small = word.toLowerCase();
  if (units.length === 0 || (plain ? spelt !== small : ![...spelt].every((one) => small.includes(one))))
    return null;
  const shown = split(small, units);
  if (!shown) return null;
  const isKnown = (i: number): boolean =>
    !UNSURE.test(units[i]!.pattern) && !isWeak(units[i]!) && known.knows(units[i]!.pattern);
  return {
    letters: shown.map(({ letters, at }) => (isKnown(at) ? letters : `[${letters}]`)).join(' '),
    sounds: soundsOf(units, known),
    byHeart: units
      .flatMap(({ letters, sound }, i) =>
        isKnown(i)
          ? []
          : [sound === '-' ? `${letters} is silent` : `${letters} says ${soundName(sound, known.style)}`],
      )
      .join(', '),
  };
}

/** `s · ĕ · d`; of one `w · ŭ · n`. */
export function soundsOf(units: readonly Unit[], { style }: KnownWords): string {
  return units
    .flatMap(({ sound }) => (sound.startsWith('W.') ? ['W', sound.slice(2)] : [sound]))
    .map((sound) => (sound === '-' ? '–' : soundName(sound, style)))
    .join(' · ');
}

/** Joins the e of -es to the vowel before it, as a teacher maps it: d, oe, s for does; tr, ie, s for tries. */
function withVowelE(units: readonly Unit[], { accent }: KnownWords): readonly Unit[] {
  const [vowel, ending] = units.slice(-2);
  if (!vowel || !ending || ending.pattern !== 'suffix-es' || ending.letters !== 'es') return units;
  if (!/^[aeiou]$/.test(vowel.letters) || ending.sound.startsWith('I') || ending.sound.startsWith('A'))
    return units;
  const letters = `${vowel.letters}e`;
  const row = catalogue.find(
    (each) => each.letters.split(' ').includes(letters) && soundsIn(each, accent).includes(vowel.sound),
  );
  return [
    ...units.slice(0, -2),
    { ...vowel, letters, pattern: row?.id ?? 'irregular' },
    { ...ending, letters: 's' },
  ];
}

/**
 * Returns whether a vowel is weak. The er of sister, which is weak in British English, and the le of little are
 * recognised by their rows instead.
 */
function isWeak({ letters, sound, pattern }: Unit): boolean {
  return sound.startsWith('AX') && pattern !== 'consonant-le' && !/re?$/.test(letters);
}

/**
 * Returns the letters of the word in order, each with the index of its unit. For came these are c, a, m, e, where a and
 * e are one unit.
 */
function split(word: string, units: Reading['units']): { letters: string; at: number }[] | null {
  const shown: { letters: string; at: number }[] = [];
  let left = word;
  let open: { end: string; at: number } | null = null;
  for (const [at, { letters }] of units.entries()) {
    const [first = '', end] = letters.split('_');
    if (!left.startsWith(first)) return null;
    shown.push({ letters: first, at });
    left = left.slice(first.length);
    if (end !== undefined) open = { end, at };
    else if (open && left.startsWith(open.end) && at === units.length - 1) {
      shown.push({ letters: open.end, at: open.at });
      left = left.slice(open.end.length);
    }
  }
  return left === '' ? shown : null;
}
