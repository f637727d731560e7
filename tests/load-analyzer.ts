import { readFileSync } from 'node:fs';
import {
  type Analyzer,
  createAnalyzer,
  type Guesser,
  type Lexicon,
  openGuesser,
  openLexicon,
} from '../src/analyze/index.ts';

/** The word table that `npm run data` made. */
export function loadLexicon(): Lexicon {
  return openLexicon(readFileSync(new URL('../public/data/lexicon.bin', import.meta.url)));
}

/** The guessing model that `npm run data` made. */
export function loadGuesser(): Guesser {
  return openGuesser(readFileSync(new URL('../public/data/guess.bin', import.meta.url)));
}

/** An analyser over the real word table and guessing model. */
export function loadAnalyzer(): Analyzer {
  return createAnalyzer(loadLexicon(), loadGuesser());
}
