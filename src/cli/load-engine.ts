import { existsSync, readFileSync } from 'node:fs';
import { type Analyzer, createAnalyzer, openGuesser, openLexicon } from '../analyze/index.ts';
import { InputError } from './run-command.ts';

const table = new URL('../../public/data/lexicon.bin', import.meta.url);
const model = new URL('../../public/data/guess.bin', import.meta.url);

/**
 * Creates an analyser from the word table and the guessing model that `npm run data` makes. Throws `InputError` if
 * these files do not exist yet.
 */
export function loadEngine(): Analyzer {
  expectTable();
  return createAnalyzer(openLexicon(readFileSync(table)), openGuesser(readFileSync(model)));
}

/** Throws `InputError` if the word table does not exist yet. */
export function expectTable(): void {
  if (!existsSync(table) || !existsSync(model)) {
    throw new InputError('There is no word table yet: make it with `npm run data`, then try again.');
  }
}
