import { writtenLanguage } from '../wording/say.ts';

/** `Herons`, `Herons and Plovers`, `Herons, Plovers and Terns`; as `figures` without the "and". */
export function sayList(items: readonly string[], as: 'names' | 'figures' = 'names'): string {
  return new Intl.ListFormat(writtenLanguage(), {
    type: as === 'names' ? 'conjunction' : 'unit',
  }).format(items);
}
