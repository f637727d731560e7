import { readFileSync } from 'node:fs';
import {
  type Analyzer,
  createAnalyzer,
  type Guesser,
  type Lexicon,
  openGuesser,
  openLexicon,
} from '../src/analyze/index.ts';

let lexicon: Lexicon | undefined;

/** The word table that `npm run data` made; one for all who ask. */
export function loadLexicon(): Lexicon {
  lexicon ??= openLexicon(readFileSync(new URL('../public/data/lexicon.bin', import.meta.url)));
  return lexicon;
}

let guesser: Guesser | undefined;

/** The guessing model that `npm run data` made; one for all who ask, since decoding it takes a while. */
export function loadGuesser(): Guesser {
  guesser ??= openGuesser(readFileSync(new URL('../public/data/guess.bin', import.meta.url)));
  return guesser;
}

let analyzer: Analyzer | undefined;

/** An analyser over the real word table and guessing model; one for all who ask. */
export function loadAnalyzer(): Analyzer {
  analyzer ??= createAnalyzer(loadLexicon(), loadGuesser());
  return analyzer;
}
