import {
  type Analyzer,
  createAnalyzer,
  type Guesser,
  openGuesser,
  openLexicon,
} from '../../analyze/index.ts';
import { readModel, readTable } from './engine-data.ts';
import { loadOnce } from './load-once.ts';

/** The analyser before its guessing model is here. */
export interface EarlyEngine {
  /** Analyses words of the table as ever. Any other is to be asked for only once `loadEngine` has given the model. */
  readonly engine: Analyzer;
  /** Whether the table has a word, in small letters, so that no analysis of it asks the model. */
  isListed(word: string): boolean;
}

const loadTable = loadOnce(async () => {
  const lexicon = openLexicon(await readTable());
  let guesser: Guesser | undefined;
  const engine = createAnalyzer(lexicon, {
    guess: (word) => guesser?.guess(word) ?? null,
    costOf: (word, built) => guesser?.costOf(word, built) ?? Number.POSITIVE_INFINITY,
  });
  return {
    engine,
    isListed: (word: string) => lexicon.find(word) !== null,
    take(model: Uint8Array) {
      guesser = openGuesser(model);
    },
  };
});

/** The analyser over the word table in the package, as soon as that is here. */
export const loadEarlyEngine: () => Promise<EarlyEngine> = loadTable;

/** The same analyser with the guessing model; loaded once for as long as the background lives. */
export const loadEngine = loadOnce<Analyzer>(async () => {
  const [table, model] = await Promise.all([loadTable(), readModel()]);
  table.take(model);
  readModel.forget();
  return table.engine;
});
