import type { Analyzer } from '../../analyze/index.ts';
import { PARTS_OF_SPEECH } from '../../swap/table-format.ts';
import { isForeign, listSpellings, listWordPairs } from '../../variety/index.ts';
import { readCapitalised, readFrequency } from '../read-frequency.ts';
import { readSourceRows } from '../read-source-rows.ts';
import { readUnfitWords } from '../read-unfit-words.ts';
import { readWordList } from '../read-word-list.ts';
import { readSynsets } from '../swap/read-synsets.ts';

/** The rarest rank in film subtitles (SUBTLEX) of a lesson word. Words of our own list may be rarer. */
const RAREST = 16_000;
/**
 * The earliest rank that a British word may take from its American counterpart if Britain uses that counterpart too, in
 * another sense.
 */
const EARLIEST_OF_TWO = 4_000;

/**
 * Returns the lesson words as the text of `lesson-words.tsv`, commonest first.
 * - Included: SUBTLEX to rank 16,000 and `more-lesson-words.txt`.
 * - Left out: names, coarse words (two registry lists), and the words of `not-in-lessons.txt`, by reason.
 * - A British word (colour, jumper) is included with its American counterpart and at its rank, since the subtitles are
 * mostly American.
 * - Parts of speech come from WordNet. Meanings are our own (`meanings.tsv`).
 */
export function writeWordBank(analyzer: Analyzer): string {
  const ranks = readFrequency();
  const capitals = readCapitalised();
  const unfit = readUnfitWords();
  const leftOut = readWordList('not-in-lessons.txt');
  const more = readWordList('more-lesson-words.txt');
  const isSaid = (word: string): boolean =>
    /^[a-z]+$/.test(word) && !unfit.has(word) && /common|rare/.test(analyzer.analyze(word).usage ?? '');
  const isFit = (word: string): boolean => isSaid(word) && !capitals.has(word);
  const usual = [...ranks].filter(([word, rank]) => rank <= RAREST && isFit(word)).map(([word]) => word);
  const americanOf = new Map(
    [...listSpellings(), ...listWordPairs()]
      .filter(({ british }) => isForeign(british, 'american'))
      .map(({ british, american }) => [british, american]),
  );
  const listed = new Set([...usual, 'I', ...more]);
  const british = [...americanOf].flatMap(([word, american]) =>
    // British words may be names, since grey is a name too.
    listed.has(american) && !leftOut.has(american) && isSaid(word) ? word : [],
  );
  const words = [...new Set([...listed, ...british])].filter((word) => !leftOut.has(word));
  const rankAlone = (word: string): number => ranks.get(word.toLowerCase()) ?? Number.POSITIVE_INFINITY;
  const rank = (word: string): number => {
    const american = americanOf.get(word) ?? word;
    // The American word story has two senses, so it is commoner than the British storey.
    const earliest = isForeign(american, 'british') ? 0 : EARLIEST_OF_TWO;
    return Math.min(rankAlone(word), Math.max(rankAlone(american), earliest));
  };
  words.sort((a, b) => rank(a) - rank(b) || (a < b ? -1 : 1));
  const describe = createDescriber(americanOf);
  return `${words.map((word) => [word, ...describe(word)].join('\t')).join('\n')}\n`;
}

/** Returns a function that gives a word's parts of speech, the most frequent first, and its meaning if one is written. */
function createDescriber(americanOf: ReadonlyMap<string, string>) {
  const { byId, sensesOf } = readSynsets();
  const own = readOwnMeanings();
  return (word: string): [string, string] => {
    const found = PARTS_OF_SPEECH.map((part) => {
      const senses = (sensesOf.get(`${word}/${part}`) ?? []).filter(({ id }) => !byId.get(id)!.coarse);
      return { part, senses, count: senses.reduce((sum, { count }) => sum + count, 0) };
    })
      .filter(({ senses }) => senses.length > 0)
      .sort((a, b) => b.count - a.count);
    const parts = found.map(({ part }) => part).join('');
    return [parts, own.get(word) ?? own.get(americanOf.get(word) ?? '') ?? ''];
  };
}

/**
 * Returns the meanings of words by word (`meanings.tsv`). Each meaning is one sense, written by us in a few words that
 * children know.
 */
export function readOwnMeanings(): ReadonlyMap<string, string> {
  return new Map(readSourceRows('meanings.tsv') as [string, string][]);
}
