import * as v from 'valibot';
import type { ItemChoice } from '../../analyze/index.ts';
import { sortReadable } from './groups-store.ts';
import { inTurn } from './in-turn.ts';
import { readItem, storeItem } from './store-item.ts';

const KEY = 'import-choices';

/** The teacher's choices about items of pasted sequences, by `choiceKey`. */
export type ImportChoices = Readonly<Record<string, ItemChoice>>;

const choice = v.union([v.array(v.string()), v.picklist(['by-sight', 'ignore'])]);

/** Loads the choices stored in this browser. Any other value is skipped. */
export async function loadImportChoices(): Promise<ImportChoices> {
  return sortReadable(await readItem(KEY), v.parser(choice)).read;
}

/** Saves a choice for the next time. Null deletes the choice. */
export function keepImportChoice(key: string, choice: ItemChoice | null): Promise<void> {
  return inTurn(KEY, async () => {
    const { [key]: _, ...others } = await loadImportChoices();
    const choices = choice === null ? others : { ...others, [key]: choice };
    await storeItem(KEY, choices);
  });
}
