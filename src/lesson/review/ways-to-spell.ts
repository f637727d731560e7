import { catalogue, rememberFor, soundsIn } from '../../analyze/index.ts';
import type { PatternId, Unit, WordAnalysis } from '../../analyze/types.ts';
import { findExamples, plainExamples } from '../find-examples.ts';
import type { KnownWord, KnownWords } from '../known-words.ts';
import { asHeard } from '../word-lists/as-heard.ts';
import { correspondences, heardAs } from './correspondences.ts';
import { publishedShares } from './published-shares.ts';

/** One way to spell a sound, taught to the group. */
export interface WayToSpell {
  readonly letters: string;
  /** Base words that show the spelling and that the group can read (`plainExamples`), the shortest and commonest first. */
  readonly examples: readonly KnownWord[];
  /**
   * The percentage of this spelling among the sound's spellings in the words of the bank. Each word is counted once,
   * and endings are left out.
   */
  readonly share: number;
  /** The published percentage (`publishedShares`); null where none is published. */
  readonly published: number | null;
}

/** The percentage below which a spelling without a word that children know is listed only in a lesson on it. */
const RARE = 1;
/** The percentage for a consonant, whose taught spellings may be rarer: the kn and gn of n. */
const RARE_CONSONANT = 0.6;
/** A spelling of only a word or two does not count (the al of salmon). */
const RAREST = 0.1;
const VOWEL = /^[AEIOU][A-Z]/;
const COMMON = 10;
/**
 * Letters that are no spelling to a teacher. A vowel with a doubled r is a vowel and rr (squirrel). dg and xc begin the
 * spellings dge and x (budget, except).
 */
const NO_SPELLING = /^[aeiou]rr$|^dg$|^xc$/;
/** Whether letters are a spelling to a teacher. err is none, because it is e and rr. */
export function isSpelling(letters: string): boolean {
  return !NO_SPELLING.test(letters);
}

/** A weak vowel is not spelt by an e after it (private, favorite). */
const WEAK = /^(AX|IX|IH)$/;
/** Patterns that are a way to spell er only in a lesson on them: the ar of dollar, the or of doctor and the re of acre. */
const WEAK_ER = /^(?:(?:ar|or)-weak|re-er)$/;
/**
 * Spellings that are not taught for their sound. The e of begin is unstressed, and no teacher gives it as a spelling of
 * short i. The spelling o_e stands for aw only in the word gone.
 */
const NO_WAYS: ReadonlySet<string> = new Set(['IH e', 'AO o_e']);

/**
 * Returns the spellings of a sound that were taught so far, ordered by the published share and then by our own share. A
 * spelling under 1% (0.6% for a consonant) counts only if children know a word for it, or if it is in `focus`, the
 * subject of the lesson.
 */
export function waysToSpell(
  sound: string,
  known: KnownWords,
  focus: readonly PatternId[] = [],
): WayToSpell[] {
  const shares = sharesOf(sound, known.analyses);
  // The published shares are for American words.
  const published = (known.accent === 'american' && publishedShares[sound]) || {};
  const rows = correspondences.filter(
    (row) =>
      known.knows(row.id) &&
      says(soundsIn(row, known.accent), sound) &&
      (sound !== 'ER' || !WEAK_ER.test(row.id) || focus.includes(row.id)),
  );
  const ways = new Map<string, { words: Map<string, KnownWord>; isOurs: boolean }>();
  for (const { id, letters } of rows) {
    const own = letters.split(' ');
    const saysIt = ({ affix, pattern, sound: said, letters: spelt }: Unit): boolean =>
      affix === undefined && pattern === id && said === sound && own.includes(spelt);
    // For oor the word door, which is known by sight, is shown rather than doorbell.
    const shown = findExamples(known, id).filter(
      ({ reading }) => reading.affixes.length === 0 && reading.units.some(saysIt),
    );
    for (const word of shown.length > 0 ? shown : sightExamples(known, id)) {
      // The l of wrestling is the rest of -le, so it is no way to spell its sound. The weak e of believe is no plain
      // short i.
      const unit = word.reading.units.find(saysIt);
      if (!unit || !isSpelling(unit.letters)) continue;
      // The e of hero is no way to spell the ear of near. The British pronounce no r in fork, so the aw of claw spells
      // its sound.
      if (/\.R$|^ER$/.test(sound) && VOWEL.test(sound) && !unit.letters.includes('r')) continue;
      if ((WEAK.test(sound) && unit.letters.includes('_')) || NO_WAYS.has(`${sound} ${unit.letters}`))
        continue;
      const way = ways.get(unit.letters) ?? { words: new Map<string, KnownWord>(), isOurs: false };
      way.words.set(word.word, word);
      ways.set(unit.letters, { words: way.words, isOurs: way.isOurs || focus.includes(id) });
    }
  }
  return [...ways]
    .map(([letters, { words, isOurs }]) => ({
      letters,
      isOurs,
      ...shownBy([...words.values()], letters, sound),
      share: shares.get(letters) ?? 0,
      published: published[letters] ?? null,
    }))
    .filter(
      ({ words, plain, isOurs, share }) =>
        words.length > 0 &&
        (plain || share >= COMMON) &&
        (isOurs || (plain && share >= RAREST) || share >= (VOWEL.test(sound) ? RARE : RARE_CONSONANT)),
    )
    .map(({ letters, words, share, published }) => ({ letters, examples: words, share, published }))
    .sort((a, b) => (b.published ?? 0) - (a.published ?? 0) || b.share - a.share);
}

/** Returns by-sight words that follow their patterns by now, for a pattern that no other word shows: we for long e. */
function sightExamples(known: KnownWords, id: PatternId): KnownWord[] {
  return known.words.filter(
    ({ standing, homograph, reading }) =>
      standing === 'by-sight' &&
      !homograph &&
      reading.units.some(({ pattern }) => pattern === id) &&
      reading.units.every(({ pattern }) => pattern !== 'irregular' && known.knows(pattern)),
  );
}

/**
 * Returns the words that show a spelling. If none shows it plainly, words of the catalogue are preferred: league for
 * gue.
 */
function shownBy(
  all: readonly KnownWord[],
  letters: string,
  sound: string,
): ReturnType<typeof plainExamples> {
  const shown = plainExamples(all, letters, sound);
  const byHand = shown.plain ? [] : shown.words.filter(({ word }) => chosenByHand.has(word));
  return byHand.length > 0 ? { words: byHand, plain: true } : shown;
}

const chosenByHand: ReadonlySet<string> = new Set(catalogue.flatMap(({ examples }) => examples));

/** Whether a row is a way to spell a sound. The o of off is none, because it is pronounced as aw only in some accents. */
function says(sounds: readonly string[], sound: string): boolean {
  const first = sounds[0]!;
  return sounds.includes(sound) && (first === sound || asHeard(first) !== asHeard(sound));
}

/** Returns the percentage of each spelling of a sound, over all words. */
function sharesOf(sound: string, analyses: readonly WordAnalysis[]): Map<string, number> {
  const spellings = spellingsIn(analyses).get(sound) ?? new Map<string, number>();
  const total = [...spellings.values()].reduce((sum, count) => sum + count, 0);
  return new Map([...spellings].map(([letters, count]) => [letters, (100 * count) / total]));
}

const spellingsIn = rememberFor(countSpellings);

function countSpellings(analyses: readonly WordAnalysis[]): Map<string, Map<string, number>> {
  const all = new Map<string, Map<string, number>>();
  for (const { readings } of analyses) {
    for (const { letters, sound, affix } of readings[0]!.units) {
      if (affix !== undefined) continue;
      const heard = heardAs(sound);
      const spellings = all.get(heard) ?? new Map<string, number>();
      all.set(heard, spellings.set(letters, (spellings.get(letters) ?? 0) + 1));
    }
  }
  return all;
}
