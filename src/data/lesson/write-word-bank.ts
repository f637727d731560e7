import { readFileSync } from 'node:fs';
import type { Analyzer } from '../../analyze/index.ts';
import { PARTS_OF_SPEECH } from '../../swap/table-format.ts';
import { readCapitalised, readFrequency } from '../read-frequency.ts';
import { readUnfitWords } from '../read-unfit-words.ts';
import { readSynsets, type Synsets } from '../swap/read-synsets.ts';
import { shortenMeaning } from './shorten-meaning.ts';

/** Rarer words are not for these lessons, save those of our own list; a rank by film subtitles (SUBTLEX). */
const RAREST = 16_000;

/**
 * The words lessons are made of, as the text of `lesson-words.tsv`, commonest first. In: SUBTLEX to rank 16,000 and
 * `more-lesson-words.txt`. Out: names, coarse words (two registry lists), and what `not-in-lessons.txt` has, by reason.
 * Parts of speech and meanings are WordNet's; a meaning is shortened.
 */
export function writeWordBank(analyzer: Analyzer): string {
  const ranks = readFrequency();
  const capitals = readCapitalised();
  const unfit = readUnfitWords();
  const leftOut = readList('not-in-lessons.txt');
  const more = readList('more-lesson-words.txt');
  const synsets = readSynsets();
  const isFit = (word: string): boolean =>
    /^[a-z]+$/.test(word) &&
    !capitals.has(word) &&
    !unfit.has(word) &&
    /common|rare/.test(analyzer.analyze(word).usage ?? '');
  const usual = [...ranks].filter(([word, rank]) => rank <= RAREST && isFit(word)).map(([word]) => word);
  const words = [...new Set([...usual, 'I', ...more])].filter((word) => !leftOut.has(word));
  const rank = (word: string): number => ranks.get(word.toLowerCase()) ?? Number.POSITIVE_INFINITY;
  words.sort((a, b) => rank(a) - rank(b) || (a < b ? -1 : 1));
  return `${words.map((word) => [word, ...describe(word, synsets)].join('\t')).join('\n')}\n`;
}

/** Parts of speech, those it is met as more first, and the meaning of its commonest sense. */
function describe(word: string, { byId, sensesOf }: Synsets): [string, string] {
  const found = PARTS_OF_SPEECH.map((part) => {
    const senses = (sensesOf.get(`${word}/${part}`) ?? []).filter(({ id }) => !byId.get(id)!.coarse);
    return { part, senses, count: senses.reduce((sum, { count }) => sum + count, 0) };
  })
    .filter(({ senses }) => senses.length > 0)
    .sort((a, b) => b.count - a.count);
  const senses = [...(found[0]?.senses ?? [])].sort((a, b) => b.count - a.count);
  const meanings = senses.map(({ id }) => shortenMeaning(byId.get(id)!.definition));
  return [found.map(({ part }) => part).join(''), meanings.find((meaning) => meaning !== '') ?? ''];
}

function readList(file: string): Set<string> {
  const text = readFileSync(new URL(`../source/${file}`, import.meta.url), 'utf8');
  const lines = text.split('\n').filter((line) => !line.startsWith('#'));
  return new Set(lines.join(' ').split(/\s+/).filter(Boolean));
}
