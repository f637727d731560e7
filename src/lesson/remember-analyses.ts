import { type Analyzer, remember } from '../analyze/index.ts';

/** The same analyser, which takes each word apart once: a lesson asks for the whole bank again for each group and step. */
export function rememberAnalyses({ analyze }: Analyzer): Analyzer {
  return { analyze: remember(analyze) };
}
