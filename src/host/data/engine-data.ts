import { say } from '../../wording/say.ts';
import { loadOnce } from './load-once.ts';

/** The bytes of the word table; read from the package once. */
export const readTable = loadOnce(() => readData('lexicon.bin'));
/** The bytes of the guessing model. */
export const readModel = loadOnce(() => readData('guess.bin'));

/** Reads a file by its address alone, because the file is requested before the browser's interface exists. */
async function readData(file: 'lexicon.bin' | 'guess.bin'): Promise<Uint8Array> {
  try {
    const answer = await fetch(`/data/${file}`);
    if (!answer.ok) throw new Error(`${answer.status} ${answer.statusText}`);
    return new Uint8Array(await answer.arrayBuffer());
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    throw new Error(say('host.dataFailed', { file, why }), { cause: error });
  }
}
