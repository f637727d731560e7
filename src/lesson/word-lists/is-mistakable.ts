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

/** Fewer letters or sounds are in too many good words. */
const SHORTEST = 3;

/**
 * Whether a made-up word is one after all (leer, twerp), sounds like one (scue), has a coarse word or an insult in it, by
 * letters or by sound, is all of one but its end, or is one but for its vowel. The lists hold fingerprints; `src/data/lesson/list-mistakable.ts` makes them.
 */
export function isMistakable(word: string, pronunciation: string): boolean {
  const heard = pronunciation.split(' ');
  return (
    words.has(fingerprint(word)) ||
    waysHeard(pronunciation).some((each) => homophones.has(fingerprint(asHeard(each)))) ||
    starts.has(fingerprint(word)) ||
    frames.has(fingerprint(frameOf(pronunciation))) ||
    runsOf([...word], '').some((run) => letters.has(fingerprint(run))) ||
    sounds.has(fingerprint(pronunciation)) ||
    runsOf(heard, ' ').some((run) => sounds.has(fingerprint(run)))
  );
}

/** As it is said, and as where no r is heard behind a vowel: harf is half there. */
function waysHeard(pronunciation: string): string[] {
  const without = pronunciation.replace(/(A[AO]) R(?! [AEIOU][A-Z])/, '$1');
  return without === pronunciation
    ? [pronunciation]
    : [pronunciation, without, without.replace(/A[AO]/, 'AE')];
}

/** Its consonants: of S L AH M, `S L * M`. */
export function frameOf(pronunciation: string): string {
  return pronunciation.replace(/\b[AEIOU][A-Z]\b/g, '*');
}

function runsOf(parts: readonly string[], joint: string): string[] {
  return parts.flatMap((_, from) =>
    parts.slice(from + SHORTEST - 1).map((_, more) => parts.slice(from, from + SHORTEST + more).join(joint)),
  );
}
