import type { Sequence } from '../../analyze/types.ts';
import { loadEngine } from '../../host/data/load-engine.ts';
import { loadWordBank } from '../../host/data/load-word-bank.ts';
import { makeWordRows, type WordRow } from './word-rows.ts';

/** The words to show, as ranks by frequency. More common words are known by sight, and rarer words are not known at all. */
const FROM = 400;
const TO = 4000;

/** Loads the word table and returns a function that makes the rows of words for a sequence. */
export async function loadWordRows(): Promise<(sequence: Sequence) => readonly WordRow[]> {
  const [engine, bank] = await Promise.all([loadEngine(), loadWordBank()]);
  const words = bank.words.slice(FROM, TO).map(({ word }) => word);
  return (sequence) => makeWordRows(words, engine, sequence);
}
