import type { Sequence } from '../../analyze/types.ts';
import { loadEngine } from '../../host/data/load-engine.ts';
import { loadWordBank } from '../../host/data/load-word-bank.ts';
import { makeWordRows, type WordRow } from './word-rows.ts';

/** Places by frequency of the words that are shown: the commonest are known by sight, and rarer ones not known at all. */
const FROM = 400;
const TO = 4000;

/** Makes the rows of words for a sequence, once the word table is there. */
export async function loadWordRows(): Promise<(sequence: Sequence) => readonly WordRow[]> {
  const [engine, bank] = await Promise.all([loadEngine(), loadWordBank()]);
  const words = bank.words.slice(FROM, TO).map(({ word }) => word);
  return (sequence) => makeWordRows(words, engine, sequence);
}
