import type { SpellingChange } from '../types.ts';
import { addSuffix, looksOneSyllable } from './add-suffix.ts';

export interface Stem {
  readonly stem: string;
  readonly change: SpellingChange;
}

/** The nouns whose f becomes v before -s: leaves, bookshelves; a closed list, so that believes is not of belief. */
const TURNS_TO_V = /(calf|dwarf|elf|half|hoof|knife|leaf|life|loaf|scarf|sheaf|thief|wharf|wife|wolf)$/;

/**
 * Undoes a suffix in letters alone: every base that base + suffix could spell as `word`, longest first.
 * `restoreStem('hoping', 'ing')` gives hope (drop-e) but not hop, which doubles; `restoreStem('hopping',
 * 'ing')` gives hopp and hop (double). Which of them is a word, and sounds right, is for the caller.
 * Empty when the word does not end in the suffix or nothing with a vowel would be left.
 *
 * Besides {@link addSuffix} read backwards it allows spellings in use that the rules do not give:
 * a kept e (likeable, ageing, mileage), a lost e (argument, awful, truth), a doubled l or p without stress
 * (travelled, worshipped), its absence (focused), quizzes, and the v of leaves.
 */
export function restoreStem(word: string, suffix: string): readonly Stem[] {
  if (!word.endsWith(suffix) || word.length - suffix.length < 2) return [];
  const rest = word.slice(0, -suffix.length);
  const found: Stem[] = [];
  for (const stem of possibleStems(rest, suffix)) {
    if (!/[aeiouy]/.test(stem)) continue;
    const change = changeBetween(stem, word, suffix, rest);
    if (change) found.push({ stem, change });
  }
  return found.sort((a, b) => b.stem.length - a.stem.length);
}

function possibleStems(rest: string, suffix: string): string[] {
  const stems = [rest, `${rest}e`];
  if (/(.)\1$/.test(rest) || rest.endsWith('ck')) stems.push(rest.slice(0, -1));
  if (rest.endsWith('i')) stems.push(`${rest.slice(0, -1)}y`);
  if (suffix === 'ing' && rest.endsWith('y')) stems.push(`${rest.slice(0, -1)}ie`);
  if (suffix === 'ly') stems.push(`${rest}l`, `${rest}le`);
  if (suffix === 'es' && rest.endsWith('v')) stems.push(`${rest.slice(0, -1)}f`);
  if (suffix === 's' && rest.endsWith('ve')) stems.push(`${rest.slice(0, -2)}fe`);
  return stems;
}

function changeBetween(stem: string, word: string, suffix: string, rest: string): SpellingChange | null {
  if (/fe?$/.test(stem) && /ve?$/.test(rest) && /^e?s$/.test(suffix))
    return TURNS_TO_V.test(stem) ? 'f-to-v' : null;
  const asked = suffix === 'es' ? 's' : suffix === 'ally' ? 'ly' : suffix;
  for (const stressed of looksOneSyllable(stem) ? [true] : [true, false]) {
    const made = addSuffix(stem, asked, stressed);
    if (made.spelling === word && made.affix === suffix) return made.change;
  }
  if (suffix === 'es' && rest === stem + stem.at(-1)) return /[sz]$/.test(stem) ? 'double' : null;
  if (suffix === 'es') return /[ozsx]$/.test(stem) && stem === rest ? 'none' : null;
  if (suffix === 's') return stem === rest && /ch$/.test(stem) ? 'none' : null;
  if (stem === rest && stem.endsWith('e') && /^(able|age|ing|y|ish)$/.test(suffix)) return 'none';
  if (stem === `${rest}e` && /^(ment|ful|th|ly)$/.test(suffix)) return 'drop-e';
  return null;
}
