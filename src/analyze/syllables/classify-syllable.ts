import { hasVowel, isLong } from '../alignment/sounds.ts';
import { isRegular } from '../patterns/name-pattern.ts';
import type { SyllableType } from '../types.ts';
import { affixSyllables } from './affix-syllables.ts';
import type { PlacedSpelling } from './cut-place.ts';

const WEAK = new Set(['AX', 'IX', 'Y.AX']);
const SHORT: Readonly<Record<string, string>> = { a: 'AE', e: 'EH', i: 'IH', o: 'AA AO', u: 'AH', y: 'IH' };

/**
 * The type of one syllable from the spellings in it, `start` and `end` offsets into the word.
 *
 * `closed`: one vowel letter, short or weak, with a consonant after it (nap, the -kin of napkin). `open`: one
 * vowel letter at the end, long or weak (spi-, a-). `vce`, `team`, `r-controlled`, `consonant-le` by the
 * spelling of the vowel; an ending does not close a vowel (cried, po.nies are open). `other`: any value a
 * reader would not expect from the type (old, mon.ey, have, fa.ther) and final syllables like -tion.
 */
export function classifySyllable(
  inside: readonly PlacedSpelling[],
  start: number,
  end: number,
  word: string,
): SyllableType {
  const at = inside.findIndex(
    (one) => one.start >= start && hasVowel(one.sound) && /[aeiouy]/.test(one.spells),
  );
  const vowel = inside[at];
  if (!vowel) return 'other';
  const { sound, spells } = vowel;
  // The u of valuable is what an ending left of ue.
  const letters = vowel.letters.length === 1 && spells[1] !== '_' ? vowel.letters : spells;
  const text = word.slice(start, end);
  // The r of story goes over to the next syllable.
  if (/r/.test(letters) && !text.includes('r')) return 'other';
  if (spells === 'le' && sound === 'AX.L') return 'consonant-le';
  const affix = affixSyllables('suffix', letters, sound);
  if (affix && letters.length > 1 && affix.types.length === 1 && sound.includes('.') && sound !== 'EH.R')
    return affix.types[0]!;
  const after = inside.slice(at + 1).filter((one) => one.start < end && closes(one));
  const silentE = inside.some((one, i) => i > at && one.letters === 'e' && one.sound === '-');
  if (!isRegular(letters, sound) || silentE) return 'other';
  const opened = vowel.letters.length === 1 && vowel.end === end;
  if (letters[1] === '_' && opened && isLong(sound)) return 'open';
  if (letters[1] === '_' && vowel.letters.length === 1 && WEAK.has(sound))
    return after.length > 0 ? 'closed' : 'open';
  if (letters[1] === '_')
    return isLong(sound) && !(letters === 'o_e' && sound !== 'OW') && letters + sound !== 'i_eIY'
      ? 'vce'
      : 'other';
  if (/^s?s?[ts]ure$/.test(letters)) return 'other';
  if (/r/.test(letters) && (sound.endsWith('R') || sound.endsWith('ER'))) return 'r-controlled';
  if (/^(au|[aei])$/.test(letters) && after.length > 0 && endsInR(vowel, inside.slice(at + 1), end, word))
    return 'r-controlled';
  if (/^[a-z]$/.test(letters)) return classifySingle(vowel, after, text);
  if (/^[aeiou][aeiouwy]$|gh$|^uy$|^ye$/.test(letters)) return after[0]?.letters === 'gh' ? 'other' : 'team';
  return 'other';
}

/**
 * The r of dinosaur and souvenir, at the end or before a consonant, and after an a that is said as in care before -y, -ian, -ious
 * (li.brar.y, a.quar.i.um); not that of spir.it and char.i.ty, which only closes a short vowel.
 */
function endsInR(vowel: PlacedSpelling, rest: readonly PlacedSpelling[], end: number, word: string): boolean {
  const r = rest[0];
  if (r?.letters !== 'r' || r.sound !== 'R') return false;
  const next = word.slice(end);
  if (vowel.letters === 'a' && vowel.sound === 'EH' && /^(y|i[aeou]|ily|ea)/.test(next)) return true;
  return !(r.end === end && /^[aeiouy]/.test(next));
}

function classifySingle(vowel: PlacedSpelling, after: readonly PlacedSpelling[], text: string): SyllableType {
  const { letters, sound } = vowel;
  const closing = after.filter((one) => !one.ending);
  const closed = closing.length > 0;
  const weak = WEAK.has(sound);
  const full = SHORT[letters]?.split(' ').includes(sound) ?? false;
  const beforeR = closing[0]?.letters[0] === 'r' && /^(EH|IH|UH)$/.test(sound);
  if (closed) {
    if (closing.length === 1 && /^(.|th)e$/.test(closing[0]!.letters) && text.endsWith('e')) return 'other';
    return full || weak || beforeR ? 'closed' : 'other';
  }
  const longBeforeR = (letters === 'e' && sound === 'IH') || (letters === 'u' && /UH$/.test(sound));
  return isLong(sound) || sound === 'Y.UH' || weak || longBeforeR || letters === 'y' ? 'open' : 'other';
}

/** Silent gh, h and e leave a syllable open (high); a letter said once with the next does not: the l of fully. */
function closes({ letters, sound }: PlacedSpelling): boolean {
  return sound !== '-' || !/^(gh|h|w|[aeiou]+|')$/.test(letters);
}
