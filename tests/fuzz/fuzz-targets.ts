import { loadAnalyzer } from '../load-analyzer.ts';
import { analysisTargets } from './analysis-targets.ts';
import { fileTargets } from './file-targets.ts';
import type { FuzzTarget } from './fuzz-target.ts';
import { parserTargets } from './parser-targets.ts';

/** Everything that takes what a page, a file or an older version gives. */
export async function loadTargets(): Promise<readonly FuzzTarget[]> {
  const analyzer = loadAnalyzer();
  return [...analysisTargets(analyzer), ...parserTargets, ...(await fileTargets(analyzer))];
}
