import { readFileSync } from 'node:fs';
import type { WordAnalysis } from '../../src/analyze/types.ts';
import { loadAnalyzer } from '../load-analyzer.ts';

export const analyzer = loadAnalyzer();

/** Every word lessons may use, with its analysis. */
export const lessonWords: readonly WordAnalysis[] = readFileSync(
  new URL('../../public/data/lesson-words.tsv', import.meta.url),
  'utf8',
)
  .trimEnd()
  .split('\n')
  .map((line) => analyzer.analyze(line.split('\t')[0]!));
