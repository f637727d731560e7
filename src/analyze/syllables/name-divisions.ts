import { hasVowel } from '../alignment/sounds.ts';
import type { BuiltWord } from '../build/built-word.ts';
import type { PatternId } from '../types.ts';

/**
 * Returns the ways in which the bases of a word are divided, by where the consonants between two vowels go:
 * - to both sides (VC/CV): lan.tern, rab.bit, mon.ster
 * - with the second vowel (V/CV): pi.lot, se.cret
 * - with the first vowel (VC/V): cab.in, rock.et
 * - no consonant (V/V): li.on
 * Three kinds of cut are left out. An ending or beginning is set off (row.ing). Consonant-le or a final syllable that
 * is one unit follows (ta.ble, lo.tion). A silent e comes before (rep.tile has VC/CV, safe.ty nothing).
 * @param starts Where each spelling starts (`placeSpellings`). @param cuts Where each syllable starts.
 */
export function nameDivisions(
  { parts }: BuiltWord,
  starts: readonly number[],
  cuts: readonly number[],
): PatternId[] {
  if (cuts.length < 2) return [];
  const ways = new Set<PatternId>();
  let offset = 0;
  for (const { role, spellings } of parts) {
    const from = offset;
    offset += spellings.length;
    if (role !== 'base') continue;
    let left = -1;
    for (const [i, { letters, sound }] of spellings.entries()) {
      if (!hasVowel(sound) || !/[aeiouy]/.test(letters)) continue;
      const before = left < 0 ? undefined : spellings[left]!;
      const cut = before && cuts.find((at) => at > starts[from + left]! && at <= starts[from + i]!);
      if (before && cut !== undefined && /^[aeiouy]/.test(letters) && before.letters[1] !== '_') {
        const between = spellings.slice(left + 1, i).map(({ sound }, k) => ({
          sound,
          at: starts[from + left + 1 + k]!,
          end: starts[from + left + 2 + k]!,
        }));
        const heard = between.filter(({ sound }) => sound !== '-');
        const overlaps = /r/.test(before.letters) && cut > starts[from + left]! + 1;
        const isLeft = overlaps || heard.some(({ at }) => at < cut);
        ways.add(
          wayOf(
            isLeft,
            heard.some(({ end }) => end > cut),
          ),
        );
      }
      left = i;
    }
  }
  return [...ways];
}

/** Returns the way of dividing, by whether a consonant goes left and whether one goes right. */
function wayOf(isLeft: boolean, isRight: boolean): PatternId {
  if (isLeft) return isRight ? 'divide-vc-cv' : 'divide-vc-v';
  return isRight ? 'divide-v-cv' : 'divide-v-v';
}
