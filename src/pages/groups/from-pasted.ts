import {
  choiceKey,
  type ImportedItem,
  type ImportedSequence,
  type ImportedStep,
  toSequence,
} from '../../analyze/index.ts';
import type { Sequence } from '../../analyze/types.ts';
import { say } from '../../wording/say.ts';

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

/** The teacher's own sequence a text amounts to; lines that were not understood are its note, with the step they were in. */
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

/** The title of a pasted step; an empty title, or a bare number, becomes `Step 3`. `place` counts from 0. */
export function pastedTitle({ title }: ImportedStep, place: number): string {
  if (title.trim() === '') return say('sequences.numberedStep', { step: place + 1 });
  return title
    .split(' · ')
    .map((part) => (/^\d+[a-z]?$/i.test(part) ? say('sequences.numberedStep', { step: part }) : part))
    .join(' · ');
}

/** How a list of the steps calls one: its number, and its title unless that says no more. */
export function stepName(step: ImportedStep, place: number): string {
  const title = pastedTitle(step, place);
  const number = say('sequences.numberedStep', { step: place + 1 });
  return title === number ? number : say('sequences.titledStep', { step: place + 1, title });
}
