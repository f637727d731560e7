import { type Analyzer, createAnalyzer, openLexicon } from '../analyze/index.ts';
import { browser } from './browser.ts';

let engine: Promise<Analyzer> | undefined;

/** The analyser over the word table in the package; loaded once for as long as the background lives. */
export function loadEngine(): Promise<Analyzer> {
  engine ??= fetchTable().then((bytes) => createAnalyzer(openLexicon(bytes)));
  engine.catch(() => {
    engine = undefined;
  });
  return engine;
}

async function fetchTable(): Promise<Uint8Array> {
  const answer = await fetch(browser.runtime.getURL('data/lexicon.bin'));
  return new Uint8Array(await answer.arrayBuffer());
}
