import { mergeWeak } from '../src/analyze/alignment/sounds.ts';
import { createAnalyzer, openGuesser, openLexicon } from '../src/analyze/index.ts';
import { finishReading } from '../src/analyze/word/finish-reading.ts';
import { buildGuesser } from '../src/data/guess/build-guesser.ts';
import { isHeldOut } from '../src/data/guess/held-out.ts';
import { buildLexicon } from '../src/data/lexicon/build-lexicon.ts';
import { readCmudict } from '../src/data/read-cmudict.ts';
import { listedSounds } from '../tests/accuracy/measure-guess.ts';
import { median } from './median.ts';
import { processorTime } from './processor-time.ts';
import { sayByEspeak } from './say-by-espeak.ts';
import { sayByPhonemize } from './say-by-phonemize.ts';

/** Figures for one system that pronounces words our table and model never met. */
export interface SoundFigures {
  readonly name: string;
  /** Words per second of processor time, the median of several runs. */
  readonly speed: number;
  /** The share of words, from 0 to 1, whose sounds match no listed pronunciation. Counted as in `npm run accuracy`. */
  readonly errors: number;
  /**
   * The same share, with AO counted as AA, and IH and UH counted as AH. Accents and dictionaries write these vowels
   * differently.
   */
  readonly looseErrors: number;
}

/** The sounds of every word in ARPAbet without stress, in the order of the words, and the processor seconds used. */
interface Spoken {
  readonly sounds: readonly string[];
  readonly seconds: number;
}

/**
 * Lets our guesser and two general packages pronounce a tenth of CMUdict's headwords. Our table and model are made
 * without this tenth. The packages may have met the words: each package has a list of exceptions, and phonemize took
 * its list from CMUdict.
 */
export async function measureLetterToSound(
  runs: number,
): Promise<{ readonly words: number; readonly figures: readonly SoundFigures[] }> {
  const heldOut = [...readCmudict()].filter(([word]) => isHeldOut(word));
  const words = heldOut.map(([word]) => word);
  const listed = heldOut.map(([word, variants]) => pronunciations(word, variants));
  const systems = listSystems(words);
  const figures: SoundFigures[] = [];
  for (const [name, say] of Object.entries(systems)) {
    const spoken: Spoken[] = [];
    for (let run = 0; run < runs; run++) spoken.push(await say());
    const { sounds } = spoken[0]!;
    const wrong = (as: (sounds: string) => string): number =>
      listed.filter((said, i) => !said.map(as).includes(as(sounds[i]!))).length / words.length;
    const speed = Math.round(words.length / median(spoken.map(({ seconds }) => seconds)));
    figures.push({ name, speed, errors: wrong(mergeWeak), looseErrors: wrong(mergeAccents) });
  }
  return { words: words.length, figures };
}

function listSystems(words: readonly string[]): Readonly<Record<string, () => Promise<Spoken>>> {
  const { bytes, records, pronunciations } = buildLexicon(
    () => undefined,
    (word) => !isHeldOut(word),
  );
  const guesser = openGuesser(buildGuesser(records, pronunciations));
  const lexicon = openLexicon(bytes);
  const each = async (say: (word: string) => string): Promise<Spoken> => {
    const { result, seconds } = await processorTime(() => words.map(say));
    return { sounds: result, seconds };
  };
  return {
    'our guesser': () =>
      each((word) => {
        const guess = guesser.guess(word);
        return (guess && finishReading(word, guess.built, 'guess')?.pronunciation) ?? '';
      }),
    'our whole analysis': () => {
      const analyzer = createAnalyzer(lexicon, guesser);
      return each((word) => analyzer.analyze(word).readings[0]!.pronunciation);
    },
    'espeak-ng': () => sayByEspeak(words),
    'phonemize, rules only': () => each(sayByPhonemize(true)),
    'phonemize with its list': () => each(sayByPhonemize(false)),
  };
}

/**
 * Returns the pronunciations as the engine writes them and as CMUdict writes them (hurry with AH R or with ER), so that
 * no system is wrong because of our notation.
 */
function pronunciations(word: string, listed: readonly (readonly string[])[]): string[] {
  return [...listedSounds(word, listed), ...listed.map((phones) => phones.join(' ').replaceAll(/\d/g, ''))];
}

function mergeAccents(sounds: string): string {
  return mergeWeak(sounds).replaceAll('AO', 'AA').replaceAll(/IH|UH/g, 'AH');
}
