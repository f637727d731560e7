/** A spelling with its place in the word. `end` includes a silent e that closes a split vowel. */
export interface PlacedSpelling {
  readonly letters: string;
  readonly sound: string;
  readonly spells: string;
  readonly start: number;
  readonly end: number;
  /** True if the spelling belongs to an ending that is no syllable: the s of hats. */
  readonly ending: boolean;
}

/** The place where a syllable ends: two vowels of a word, with the consonants between them. */
export interface CutPlace {
  readonly vowel: PlacedSpelling;
  readonly next: PlacedSpelling;
  /** The consonants between the vowels. A u that is said like w belongs to the g or s before it: the gu of language. */
  readonly consonants: readonly PlacedSpelling[];
  readonly first: PlacedSpelling | undefined;
  readonly last: PlacedSpelling | undefined;
  /** The letters of the consonants, if there are exactly two. */
  readonly pair: string;
  /** True if the vowel is short and keeps the consonant after it in its syllable. */
  readonly short: boolean;
  /** True if the vowel is the first of the word. */
  readonly firstInWord: boolean;
}

const SHORT = new Set(['AE', 'EH', 'AH', 'IH', 'UH']);

/** Creates the place between `vowel` and `next`. `onset` has the letters before the vowel. */
export function placeBetween(
  vowel: PlacedSpelling,
  between: readonly PlacedSpelling[],
  next: PlacedSpelling,
  firstInWord: boolean,
  onset = '',
): CutPlace {
  const heard = between.length > 1 && between[0]!.sound === '-' ? between.slice(1) : between;
  const consonants = joinGlide(heard);
  const first = consonants[0];
  const short =
    first !== undefined &&
    (keepsConsonant(vowel, first) ||
      isQuAl(onset, vowel) ||
      (firstInWord && isStressedBeforeWeak(vowel, first, next)));
  const last = consonants.at(-1);
  const pair = consonants.length === 2 ? first!.letters + last!.letters : '';
  return { vowel, next, consonants, first, last, pair, short, firstInWord };
}

/**
 * Joins the u of lan.guage and per.suade to the consonant before it. A rule in cut-rules.ts does the same for the i of
 * ju.nior after a long vowel, but not for on.ion.
 */
function joinGlide(consonants: readonly PlacedSpelling[]): readonly PlacedSpelling[] {
  const [before, glide] = consonants.slice(-2);
  if (!before || glide?.letters !== 'u' || glide.sound !== 'W' || !/^[gs]$/.test(before.letters))
    return consonants;
  return [...consonants.slice(0, -2), { ...before, letters: `${before.letters}u`, end: glide.end }];
}

/** True for the a of qual.i.ty, which is as short as in a closed syllable; false for the a of fa.ther. */
function isQuAl(onset: string, { letters, sound }: PlacedSpelling): boolean {
  return onset === 'qu' && letters === 'a' && sound === 'AA';
}

/**
 * True for the first of two weak vowels at the start of a word, which is pronounced with some stress: stim.u.la.tion,
 * sit.u.a.tion; not di.rect.
 */
function isStressedBeforeWeak(vowel: PlacedSpelling, first: PlacedSpelling, next: PlacedSpelling): boolean {
  if (vowel.letters !== 'i' || vowel.sound !== 'IX') return false;
  return first.sound === 'CH' || /^(Y\.)?(AX|IX|ER)$/.test(next.sound);
}

/**
 * True if a short vowel keeps the consonant after it. e and u before r count as long (he.ro, ju.ry), and so does the a
 * of fa.ther.
 */
function keepsConsonant(vowel: PlacedSpelling, next: PlacedSpelling): boolean {
  const { letters, sound } = vowel;
  if (next.letters === 'r' && ((letters === 'e' && sound === 'IH') || letters === 'u')) return false;
  if (SHORT.has(sound)) return true;
  if (letters === 'o' || letters === 'ho') return sound === 'AA' || sound === 'AO' || sound === 'UW';
  return false;
}
