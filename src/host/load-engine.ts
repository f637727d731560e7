import { type Analyzer, createAnalyzer, openGuesser, openLexicon } from '../analyze/index.ts';
import { browser } from './browser.ts';

let engine: Promise<Analyzer> | undefined;

/** The analyser over the word table and the guessing model in the package; loaded once for as long as the background lives. */
export function loadEngine(): Promise<Analyzer> {
  engine ??= Promise.all([fetchData('lexicon.bin'), fetchData('guess.bin')]).then(([table, model]) =>
    createAnalyzer(openLexicon(table), openGuesser(model)),
  );
  engine.catch(() => {
    engine = undefined;
  });
  return engine;
}

async function fetchData(file: 'lexicon.bin' | 'guess.bin'): Promise<Uint8Array> {
  const answer = await fetch(browser.runtime.getURL(`data/${file}`));
  return new Uint8Array(await answer.arrayBuffer());
}
