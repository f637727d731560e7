import { readFileSync } from 'node:fs';
import { type Analyzer, createAnalyzer, type Lexicon, openLexicon } from '../src/analyze/index.ts';

/** The word table that `npm run data` made. */
export function loadLexicon(): Lexicon {
  return openLexicon(readFileSync(new URL('../public/data/lexicon.bin', import.meta.url)));
}

/** An analyser over the real word table. */
export function loadAnalyzer(): Analyzer {
  return createAnalyzer(loadLexicon());
}
