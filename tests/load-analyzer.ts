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

let guesser: Guesser | undefined;

/** The guessing model that `npm run data` made; one for all who ask, since decoding it takes a while. */
export function loadGuesser(): Guesser {
  guesser ??= openGuesser(readFileSync(new URL('../public/data/guess.bin', import.meta.url)));
  return guesser;
}

/** An analyser over the real word table and guessing model. */
export function loadAnalyzer(): Analyzer {
  return createAnalyzer(loadLexicon(), loadGuesser());
}
