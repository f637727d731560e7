import { type Analyzer, createAnalyzer, openGuesser, openLexicon } from '../../analyze/index.ts';
import { readEngineData } from './engine-data.ts';

let engine: Promise<Analyzer> | undefined;

/** The analyser over the word table and the guessing model in the package; loaded once for as long as the background lives. */
export function loadEngine(): Promise<Analyzer> {
  engine ??= readEngineData().then(([table, model]) =>
    createAnalyzer(openLexicon(table), openGuesser(model)),
  );
  engine.catch(() => {
    engine = undefined;
  });
  return engine;
}
