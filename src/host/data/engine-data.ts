import { say } from '../../wording/say.ts';
import { browser } from '../browser.ts';
import { loadOnce } from './load-once.ts';

/** The bytes of the word table and of the guessing model. */
export type EngineData = readonly [table: Uint8Array, model: Uint8Array];

/** Reads them from the package, once. */
export const readEngineData = loadOnce<EngineData>(() =>
  Promise.all([fetchData('lexicon.bin'), fetchData('guess.bin')]),
);

async function fetchData(file: 'lexicon.bin' | 'guess.bin'): Promise<Uint8Array> {
  try {
    const answer = await fetch(browser.runtime.getURL(`data/${file}`));
    if (!answer.ok) throw new Error(`${answer.status} ${answer.statusText}`);
    return new Uint8Array(await answer.arrayBuffer());
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    throw new Error(say('host.dataFailed', { file, why }), { cause: error });
  }
}
