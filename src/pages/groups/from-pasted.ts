import {
  choiceKey,
  type ImportedItem,
  type ImportedSequence,
  type ImportedStep,
  toSequence,
} from '../../analyze/index.ts';
import type { Sequence } from '../../analyze/types.ts';
import { say } from '../../wording/say.ts';

/** A pasted item that the teacher should check. Repeated items are listed once. `step` counts from 0. */
export interface ItemToSettle {
  readonly key: string;
  readonly item: ImportedItem;
  readonly step: number;
}

/** Returns the items that were not understood or only guessed, unknown items first. */
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

/**
 * Turns a pasted text into a sequence of the teacher’s own. The note lists the pieces that were not understood, each
 * with its step.
 */
export function fromPasted(imported: ImportedSequence, name: string): Omit<Sequence, 'id'> {
  const steps = imported.steps.map((step, i) => ({
    ...step,
    title: step.title.trim() && pastedTitle(step, i),
  }));
  const { id: _, ...sequence } = toSequence(
    { ...imported, steps },
    { id: 'pasted', name, source: say('sequences.pastedSource'), licence: say('sequences.pastedLicence') },
  );
  const left = imported.steps.flatMap(({ items }, step) =>
    items
      .filter(({ status }) => status === 'unknown')
      .map(({ text }) => say('sequences.pieceInStep', { piece: text, step: step + 1 })),
  );
  return left.length === 0
    ? sequence
    : { ...sequence, note: say('sequences.pastedNote', { pieces: left.join('; ') }) };
}

/**
 * Returns the title of a pasted step. An empty title or a bare number becomes a title such as `Step 3`. A number that only
 * repeats the place of the step is left out before a name: `3 · Short i` becomes `Short i`. `place` counts from 0.
 */
export function pastedTitle({ title }: ImportedStep, place: number): string {
  if (title.trim() === '') return say('sequences.numberedStep', { step: place + 1 });
  const parts = title.split(' · ');
  const repeats = parts.length > 1 && new RegExp(`^(?:step )?0*${place + 1}$`, 'i').test(parts[0]!);
  return (repeats ? parts.slice(1) : parts)
    .map((part) => (/^\d+[a-z]?$/i.test(part) ? say('sequences.numberedStep', { step: part }) : part))
    .join(' · ');
}

/** Returns a step’s name for a list: its number, and its title unless the title only repeats the number. */
export function stepName(step: ImportedStep, place: number): string {
  const title = pastedTitle(step, place);
  const number = say('sequences.numberedStep', { step: place + 1 });
  return title === number ? number : say('sequences.titledStep', { step: place + 1, title });
}
