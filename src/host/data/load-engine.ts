import {
  type Analyzer,
  createAnalyzer,
  type Guesser,
  openGuesser,
  openLexicon,
} from '../../analyze/index.ts';
import { readModel, readTable } from './engine-data.ts';
import { loadOnce } from './load-once.ts';

/** The analyser before its guessing model is loaded. */
export interface EarlyEngine {
  /** Analyses words of the table as usual. Other words may be analysed only after `loadEngine` has loaded the model. */
  readonly engine: Analyzer;
  /** Returns whether the table has a word, given in lower case. The analysis of such a word does not use the model. */
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

/** Loads the analyser over the word table in the package. The analyser is returned as soon as the table is loaded. */
export const loadEarlyEngine: () => Promise<EarlyEngine> = loadTable;

/** Loads the analyser of `loadEarlyEngine` together with the guessing model, once for as long as the background runs. */
export const loadEngine = loadOnce<Analyzer>(async () => {
  const [table, model] = await Promise.all([loadTable(), readModel()]);
  table.take(model);
  readModel.forget();
  return table.engine;
});
