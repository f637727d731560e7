import { createAligner } from '../../analyze/alignment/align.ts';
import { findDerivations } from '../morphology/find-derivations.ts';
import { readCorrections } from '../morphology/read-corrections.ts';
import { readCmudict } from '../read-cmudict.ts';
import { readCapitalised, readFrequency } from '../read-frequency.ts';
import { readWordnet } from '../read-wordnet.ts';
import { cleanPronunciation } from './clean-pronunciation.ts';
import { learnWeights } from './learn-weights.ts';
import { makeRecords } from './make-records.ts';
import { readHandMade } from './read-hand-made.ts';
import { writeTable } from './write-table.ts';

/** Words the weights are learnt from: the commonest; names and rare words teach wrong habits. */
const LEARN_FROM = 30_000;

export interface BuiltLexicon {
  readonly bytes: Uint8Array;
  readonly words: number;
  /** Headwords that could not be aligned: mostly abbreviations. */
  readonly left: number;
}

/** From the packages to the word table: clean, derive, learn, align, compose, write. Takes some seconds. */
export function buildLexicon(onStep: (step: string) => void): BuiltLexicon {
  onStep('reading dictionaries');
  const handMade = readHandMade();
  const pronunciations = new Map([...readCmudict()].filter(([word]) => belongs(word)));
  for (const words of [handMade.pronunciations, handMade.homographs])
    for (const [word, phones] of words) pronunciations.set(word, [...phones.map((one) => [...one])]);
  const rank = readFrequency();
  const wordnet = readWordnet();
  onStep('finding bases and affixes');
  const facts = { ...wordnet, rank, capitalised: readCapitalised() };
  const derivations = findDerivations(pronunciations, facts, readCorrections());
  onStep('learning spellings');
  const common = [...pronunciations].filter(
    ([word]) => (rank.get(word) ?? Infinity) <= LEARN_FROM && !derivations.has(word),
  );
  const aligner = createAligner(
    learnWeights(common.map(([word, variants]) => [word, cleanPronunciation(word, variants[0]!)])),
  );
  onStep('aligning words');
  const records = makeRecords({ pronunciations, derivations, aligner, handMade });
  return { bytes: writeTable(records), words: records.size, left: pronunciations.size - records.size };
}

/** Letters with at most an apostrophe inside; possessives and shortened words are put together when they are met. */
function belongs(word: string): boolean {
  return /^[a-z]+('[a-z]+)?$/.test(word) && word.length > 1
    ? !/('s|n't|'ve|'ll|'re|'d|'m)$/.test(word)
    : /^[ai]$/.test(word);
}
