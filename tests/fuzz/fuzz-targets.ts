import { loadAnalyzer } from '../load-analyzer.ts';
import { analysisTargets } from './analysis-targets.ts';
import { fileTargets } from './file-targets.ts';
import type { FuzzTarget } from './fuzz-target.ts';
import { parserTargets } from './parser-targets.ts';

/** Loads the fuzz targets for all code that takes input from a page, a file or an older version. */
export async function loadTargets(): Promise<readonly FuzzTarget[]> {
  const analyzer = loadAnalyzer();
  return [...analysisTargets(analyzer), ...parserTargets, ...(await fileTargets(analyzer))];
}
