import { choiceKey, type ImportedItem, type ImportedSequence, toSequence } from '../analyze/index.ts';
import type { Sequence } from '../analyze/types.ts';

/** An item the teacher should look at, once however often it was pasted; `step` counts from 0. */
export interface ItemToSettle {
  readonly key: string;
  readonly item: ImportedItem;
  readonly step: number;
}

/** The items of a text that were not understood or only guessed, the former first. */
export function itemsToSettle({ steps }: ImportedSequence): readonly ItemToSettle[] {
  const found = new Map<string, ItemToSettle>();
  steps.forEach(({ items }, step) => {
    for (const item of items) {
      const key = choiceKey(item.text);
      if ((item.status === 'unknown' || item.status === 'guessed') && !found.has(key)) {
        found.set(key, { key, item, step });
      }
    }
  });
  const all = [...found.values()];
  const unknown = all.filter(({ item }) => item.status === 'unknown');
  return [...unknown, ...all.filter(({ item }) => item.status === 'guessed')];
}

/** The teacher's own sequence a text amounts to; what was not understood is its note, with the step it stood in. */
export function fromPasted(imported: ImportedSequence, name: string): Omit<Sequence, 'id'> {
  const { id: _, ...sequence } = toSequence(imported, { id: 'pasted', name });
  const left = imported.steps.flatMap(({ items }, step) =>
    items.filter(({ status }) => status === 'unknown').map(({ text }) => `“${text}” (step ${step + 1})`),
  );
  return left.length === 0
    ? sequence
    : { ...sequence, note: `Not understood when pasted: ${left.join('; ')}.` };
}
