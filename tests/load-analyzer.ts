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

/** Returns the word table that `npm run data` made. All callers share one table. */
export function loadLexicon(): Lexicon {
  lexicon ??= openLexicon(readFileSync(new URL('../public/data/lexicon.bin', import.meta.url)));
  return lexicon;
}

let guesser: Guesser | undefined;

/** Returns the guessing model that `npm run data` made. All callers share one model, since decoding it takes a while. */
export function loadGuesser(): Guesser {
  guesser ??= openGuesser(readFileSync(new URL('../public/data/guess.bin', import.meta.url)));
  return guesser;
}

let analyzer: Analyzer | undefined;

/** Returns an analyser with the real word table and guessing model. All callers share one analyser. */
export function loadAnalyzer(): Analyzer {
  analyzer ??= createAnalyzer(loadLexicon(), loadGuesser());
  return analyzer;
}
