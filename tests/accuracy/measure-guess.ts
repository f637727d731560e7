import { fileURLToPath } from 'node:url';
import { mergeWeak } from '../../src/analyze/alignment/sounds.ts';
import { createAnalyzer, openGuesser, openLexicon } from '../../src/analyze/index.ts';
import { finishReading } from '../../src/analyze/word/finish-reading.ts';
import { buildGuesser } from '../../src/data/guess/build-guesser.ts';
import { isHeldOut } from '../../src/data/guess/held-out.ts';
import { buildLexicon } from '../../src/data/lexicon/build-lexicon.ts';
import { cleanPronunciation } from '../../src/data/lexicon/clean-pronunciation.ts';
import { readCmudict } from '../../src/data/read-cmudict.ts';
import { readCapitalised, readFrequency } from '../../src/data/read-frequency.ts';

/** The accuracy of the readings of words that were left out of the table and the model. Shares are from 0 to 1. */
export interface GuessScore {
  /** The held-out headwords. Words that could not be aligned (mr, tv) count as wrong. */
  readonly words: number;
  /** Words whose sounds agree with no listed pronunciation: by the model alone, and by the whole analysis. */
  readonly modelErrors: number;
  readonly errors: number;
  /** Held-out words that the frequency list writes in lower case. */
  readonly common: number;
  readonly commonErrors: number;
  /**
   * Common words that require exactly the patterns of the full table's reading: spellings, affixes, syllables and all
   * other patterns.
   */
  readonly patternsRight: number;
  /** Common words whose spellings and sounds agree with the full table. */
  readonly spellingsRight: number;
  /** The size of the model made from nine tenths of the words. */
  readonly bytes: number;
}

/**
 * Reads a tenth of CMUdict's headwords (a-z, two or more letters) with a table and a model made from the rest. Stress
 * is ignored. Schwa equals AH, and the weak i equals IH. A word is right if it matches any listed pronunciation.
 */
export function measureGuess(): GuessScore {
  const built = buildLexicon(
    () => undefined,
    (word) => !isHeldOut(word),
  );
  const model = buildGuesser(built.records, built.pronunciations);
  const guesser = openGuesser(model);
  const analyzer = createAnalyzer(openLexicon(built.bytes), guesser);
  const full = buildLexicon(() => undefined);
  const listed = createAnalyzer(openLexicon(full.bytes));
  const rank = readFrequency();
  const capitalised = readCapitalised();
  const count = { words: 0, model: 0, whole: 0, common: 0, commonWhole: 0, patterns: 0, spellings: 0 };
  for (const [word, variants] of readCmudict()) {
    if (!isHeldOut(word)) continue;
    const said = listedSounds(word, variants);
    const guess = guesser.guess(word)?.built;
    const alone = guess ? finishReading(word, guess, 'guess') : null;
    const reading = analyzer.analyze(word).readings[0]!;
    const right = said.has(mergeWeak(reading.pronunciation));
    count.words++;
    if (alone && said.has(mergeWeak(alone.pronunciation))) count.model++;
    if (right) count.whole++;
    if (!rank.has(word) || capitalised.has(word)) continue;
    count.common++;
    if (right) count.commonWhole++;
    const own = listed.analyze(word).readings[0]!;
    if (own.source !== 'dictionary') continue;
    if (`${own.requires}` === `${reading.requires}`) count.patterns++;
    if (spellingsOf(own) === spellingsOf(reading)) count.spellings++;
  }
  const { words, common } = count;
  return {
    words,
    modelErrors: 1 - count.model / words,
    errors: 1 - count.whole / words,
    common,
    commonErrors: 1 - count.commonWhole / common,
    patternsRight: count.patterns / common,
    spellingsRight: count.spellings / common,
    bytes: model.length,
  };
}

function spellingsOf({
  units,
}: {
  readonly units: readonly { readonly letters: string; readonly sound: string }[];
}): string {
  return [...new Set(units.map(({ letters, sound }) => `${letters}:${mergeWeak(sound)}`))].sort().join(' ');
}

/** Returns the pronunciations of a CMUdict word in the sounds of the engine, with weak vowels merged. */
export function listedSounds(word: string, pronunciations: readonly (readonly string[])[]): Set<string> {
  return new Set(pronunciations.map((phones) => mergeWeak(cleanPronunciation(word, phones).join(' '))));
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  for (const [name, value] of Object.entries(measureGuess())) {
    const shown = value <= 1 ? `${(100 * value).toFixed(1)}%` : value.toLocaleString('en');
    console.log(`${name.padEnd(16)}${shown}`);
  }
}
