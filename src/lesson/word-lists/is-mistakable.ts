import { asHeard } from './as-heard.ts';
import { fingerprint } from './fingerprint.ts';
import lists from './mistakable.json' with { type: 'json' };

const setOf = (list: string): ReadonlySet<string> => new Set(list.split(' '));
const letters = setOf(lists.letters);
const starts = setOf(lists.starts);
const sounds = setOf(lists.sounds);
const frames = setOf(lists.frames);
const words = setOf(lists.words);
const homophones = setOf(lists.homophones);

/** The shortest run of letters or sounds to check. Shorter runs are in too many good words. */
const SHORTEST = 3;

/**
 * Whether a made-up word can be mistaken for a word:
 * - It is a word after all (leer, twerp) or sounds like one (scue).
 * - It has a coarse word or an insult in it, by letters or by sound.
 * - It is a whole word without its end, or a word with another vowel.
 * The lists hold fingerprints; `src/data/lesson/list-mistakable.ts` makes them.
 */
export function isMistakable(word: string, pronunciation: string): boolean {
  return (
    words.has(fingerprint(word)) ||
    waysHeard(pronunciation).some((each) => homophones.has(fingerprint(asHeard(each)))) ||
    starts.has(fingerprint(word)) ||
    frames.has(fingerprint(frameOf(pronunciation))) ||
    NEARLY.has(word) ||
    runsOf([...word], '').some((run) => letters.has(fingerprint(run))) ||
    coarseWays(pronunciation).some(
      (each) =>
        sounds.has(fingerprint(each)) ||
        runsOf(each.split(' '), ' ').some((run) => sounds.has(fingerprint(run))),
    )
  );
}

/**
 * Words of speech that no list has. Some differ from a word only in an h, and some look odd. Chosen from the lists by
 * hand.
 */
const NEARLY: ReadonlySet<string> = new Set(
  'chorch curch firt gonna hain haint hant hask heg hend hoat jurch knump phobe plout proo queet redge shrea sploo stame swy twy wanna woan wrept yoan'.split(
    ' ',
  ),
);

/**
 * Returns a pronunciation and the pronunciations of other speakers. Without the r after a vowel harf is half. With f
 * for th fank is thank. With or without the yoo of view vew is view.
 */
function waysHeard(pronunciation: string): string[] {
  const without = pronunciation.replace(/(A[AO]) R(?! [AEIOU][A-Z])/, '$1');
  return [
    ...new Set([
      pronunciation,
      without,
      ...(without === pronunciation ? [] : [without.replace(/A[AO]/, 'AE')]),
      pronunciation.replaceAll(/\bF\b/g, 'TH'),
      pronunciation.replaceAll(/\bV\b/g, 'DH'),
      pronunciation.replaceAll(/\bTH\b/g, 'F'),
      pronunciation.replace(/(?<!Y )\bUW\b/, 'Y UW'),
      pronunciation.replace(/\bY UW\b/, 'UW'),
    ]),
  ];
}

/**
 * Returns a pronunciation with the variants in which a coarse word may also be heard: with d for t or t for d, and with
 * another vowel before r.
 */
function coarseWays(pronunciation: string): string[] {
  const vowels = /\bER\b|\bA[AO] R\b/.test(pronunciation)
    ? ['ER', 'AA R', 'AO R'].map((vowel) => pronunciation.replace(/\bER\b|\bA[AO] R\b/, vowel))
    : [pronunciation];
  const swaps = (text: string): string[] =>
    [...text.matchAll(/\b[DT]\b/g)].map(
      ({ 0: sound, index }) => `${text.slice(0, index)}${sound === 'D' ? 'T' : 'D'}${text.slice(index + 1)}`,
    );
  return [pronunciation, ...vowels, ...vowels.flatMap(swaps)];
}

/** Returns a pronunciation with `*` for each vowel: `S L * M` for `S L AH M`. */
export function frameOf(pronunciation: string): string {
  return pronunciation.replace(/\b[AEIOU][A-Z]\b/g, '*');
}

function runsOf(parts: readonly string[], joint: string): string[] {
  return parts.flatMap((_, from) =>
    parts.slice(from + SHORTEST - 1).map((_, more) => parts.slice(from, from + SHORTEST + more).join(joint)),
  );
}
