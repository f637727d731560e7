import type { ItemChoice } from '../../analyze/index.ts';
import { inTurn } from './in-turn.ts';
import { readItem, storeItem } from './store-item.ts';

const KEY = 'import-choices';

/** What the teacher settled about items of pasted sequences, by `choiceKey`. */
export type ImportChoices = Readonly<Record<string, ItemChoice>>;

/** The choices kept in this browser; what is not a choice is passed over. */
export async function loadImportChoices(): Promise<ImportChoices> {
  const kept: unknown = await readItem(KEY);
  if (typeof kept !== 'object' || kept === null) return {};
  return Object.fromEntries(Object.entries(kept).filter(([, choice]) => isChoice(choice)));
}

/** Keeps a choice for the next time; null forgets it. */
export function keepImportChoice(key: string, choice: ItemChoice | null): Promise<void> {
  return inTurn(KEY, async () => {
    const { [key]: _, ...others } = await loadImportChoices();
    const choices = choice === null ? others : { ...others, [key]: choice };
    await storeItem(KEY, choices);
  });
}

function isChoice(value: unknown): value is ItemChoice {
  if (Array.isArray(value)) return value.every((id) => typeof id === 'string');
  return value === 'by-sight' || value === 'ignore';
}
