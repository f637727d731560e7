import { existsSync, readFileSync } from 'node:fs';
import { createSwapper, type Swapper } from '../swap/create-swapper.ts';
import { openSwaps } from '../swap/open-swaps.ts';
import phrases from '../swap/phrase-swaps.json' with { type: 'json' };
import { InputError } from './run-command.ts';

/** Creates a swapper from the table that `npm run data` makes. Throws `InputError` if the table does not exist yet. */
export function loadSwapper(): Swapper {
  const table = new URL('../../public/data/swaps.bin', import.meta.url);
  if (!existsSync(table)) {
    throw new InputError(
      'There is no table of replacement words yet. Make it with `npm run data`, then try again.',
    );
  }
  return createSwapper(openSwaps(readFileSync(table)), phrases);
}
