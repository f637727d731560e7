import { createAligner } from '../../analyze/alignment/align.ts';
import type { Usage } from '../../analyze/types.ts';
import { findDerivations } from '../morphology/find-derivations.ts';
import { readCorrections } from '../morphology/read-corrections.ts';
import { readCmudict } from '../read-cmudict.ts';
import { readCapitalised, readFrequency } from '../read-frequency.ts';
import { readWordnet } from '../read-wordnet.ts';
import { addBritish } from './add-british.ts';
import { cleanPronunciation } from './clean-pronunciation.ts';
import { learnWeights } from './learn-weights.ts';
import type { RecordSources } from './make-records.ts';
import { readHandMade } from './read-hand-made.ts';
import { createUsage } from './tell-usage.ts';

/** The rank up to which words are used to learn the weights. Names and rare words teach wrong habits. */
const LEARN_FROM = 30_000;

/**
 * Reads from the packages everything that the records are made from. Takes some seconds. Words for which `keep` is
 * false are left out, so that the learnt model can be measured on them.
 */
export function gatherSources(
  onStep: (step: string) => void = () => undefined,
  keep: (word: string) => boolean = () => true,
): RecordSources & { usageOf: (word: string) => Usage } {
  onStep('reading dictionaries');
  const handMade = readHandMade();
  const pronunciations = new Map<string, readonly (readonly string[])[]>(
    [...readCmudict()].filter(([word]) => belongs(word)),
  );
  for (const corrected of [handMade.pronunciations, handMade.homographs]) {
    for (const [word, phones] of corrected) pronunciations.set(word, phones);
  }
  addBritish(pronunciations);
  for (const word of pronunciations.keys()) if (!keep(word)) pronunciations.delete(word);
  const rank = readFrequency();
  onStep('finding bases and affixes');
  const wordnet = readWordnet();
  const capitalised = readCapitalised();
  const facts = { ...wordnet, rank, capitalised };
  const derivations = findDerivations(pronunciations, facts, readCorrections());
  onStep('learning spellings');
  const common = [...pronunciations].filter(
    ([word]) => (rank.get(word) ?? Infinity) <= LEARN_FROM && !derivations.has(word),
  );
  const spoken = common.map(([word, variants]): [string, string[]] => [
    word,
    cleanPronunciation(word, variants[0]!),
  ]);
  const usageOf = createUsage({ facts, derivations, own: handMade.pronunciations });
  return { usageOf, pronunciations, derivations, aligner: createAligner(learnWeights(spoken)), handMade };
}

/**
 * Whether a word consists of letters with at most one apostrophe inside. Possessives and contractions are left out,
 * since they are built when they occur in a text.
 */
function belongs(word: string): boolean {
  if (word.length === 1) return /[ai]/.test(word);
  return /^[a-z]+('[a-z]+)?$/.test(word) && !/('s|n't|'ve|'ll|'re|'d|'m)$/.test(word);
}
