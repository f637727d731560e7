import { IRREGULAR } from '../patterns/irregular.ts';
import type { Sequence } from '../types.ts';
import type { ImportedSequence } from './imported-sequence.ts';

/**
 * Converts an imported text to a sequence that `parseSequence` accepts. A pattern or by-sight word stays only in the
 * first step that has it. Steps that teach nothing are kept, so that the steps keep their numbers. A text without steps
 * gives one empty step. `source` names the origin if the text has no title of its own.
 */
export function toSequence(
  imported: ImportedSequence,
  { id, name, source, licence }: Pick<Sequence, 'id' | 'name' | 'source' | 'licence'>,
): Sequence {
  const seen = new Set<string>([IRREGULAR]);
  const fresh = (texts: readonly string[]) => texts.filter((text) => !seen.has(text) && seen.add(text));
  const words = new Set<string>();
  const freshWords = (texts: readonly string[]) =>
    texts.filter((text) => !words.has(text) && words.add(text));
  const steps = imported.steps.map(({ title, items }) => ({
    ...(title.trim() === '' ? {} : { title }),
    teaches: items.flatMap(({ patterns }) => fresh(patterns)),
    bySight: items.flatMap(({ bySight }) => freshWords(bySight)),
  }));
  return {
    id,
    name,
    source: imported.title.trim() === '' ? source : imported.title,
    licence,
    steps: steps.length > 0 ? steps : [{ teaches: [], bySight: [] }],
  };
}
