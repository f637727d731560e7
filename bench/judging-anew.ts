import { readFileSync } from 'node:fs';
import {
  compileGroup,
  createAnalyzer,
  createJudge,
  openGuesser,
  openLexicon,
  parseGroup,
  parseSequence,
  tallyText,
  tokenize,
  type WordCounts,
} from '../src/analyze/index.ts';
import { median } from './median.ts';
import { writePage } from './write-page.ts';

/** The time to judge a text again after its group has moved one step on. */
export interface JudgingAnew {
  /** The number of all words of the text. */
  readonly text: number;
  /** The number of distinct words of the text. */
  readonly words: number;
  /** The median time of five runs, in milliseconds. */
  readonly ours: number;
}

const TEXTS = [1000, 10_000, 100_000, 1_000_000];

/**
 * Judges texts of each length again, as the background does when the group is changed. The words are known, but their
 * standings are not.
 */
export function measureJudgingAnew(): JudgingAnew[] {
  const read = (path: string): Buffer => readFileSync(new URL(path, import.meta.url));
  const sequence = parseSequence(
    JSON.parse(read('../profiles/sequences/steady-steps.json').toString('utf8')),
  );
  const engine = createAnalyzer(
    openLexicon(read('../public/data/lexicon.bin')),
    openGuesser(read('../public/data/guess.bin')),
  );
  const groupAt = (step: number) =>
    compileGroup(parseGroup({ name: 'Herons', sequence: sequence.id, step }), sequence);
  const judge = createJudge(engine, groupAt(12));
  return TEXTS.map((text) => {
    const counts = countsOf(writePage(text).replace(/<[^>]*>/g, ' '));
    tallyText(counts, judge);
    const times = [13, 14, 15, 16, 17].map((step) => {
      const start = performance.now();
      tallyText(counts, judge.forGroup(groupAt(step)));
      return performance.now() - start;
    });
    return { text, words: [...counts.words].length, ours: median(times) };
  });
}

function countsOf(text: string): WordCounts {
  const words = new Map<string, number>();
  for (const { kind, key } of tokenize(text)) if (kind === 'word') words.set(key, (words.get(key) ?? 0) + 1);
  return { words, skipped: 0 };
}
