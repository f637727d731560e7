import { type Analyzer, createAnalyzer, openGuesser, openLexicon } from '../../analyze/index.ts';
import { readEngineData } from './engine-data.ts';
import { loadOnce } from './load-once.ts';

/** The analyser over the word table and the guessing model in the package; loaded once for as long as the background lives. */
export const loadEngine = loadOnce<Analyzer>(async () => {
  const [table, model] = await readEngineData();
  return createAnalyzer(openLexicon(table), openGuesser(model));
});
