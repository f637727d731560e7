import { existsSync, readFileSync } from 'node:fs';
import { type Analyzer, createAnalyzer, openLexicon } from '../analyze/index.ts';
import { InputError } from './run-command.ts';

/** An analyser over the word table that `npm run data` makes. Throws `InputError` when there is none yet. */
export function loadEngine(): Analyzer {
  const table = new URL('../../public/data/lexicon.bin', import.meta.url);
  if (!existsSync(table)) {
    throw new InputError('There is no word table yet: make it with `npm run data`, then try again.');
  }
  return createAnalyzer(openLexicon(readFileSync(table)));
}
