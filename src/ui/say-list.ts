import { writtenLanguage } from '../wording/say.ts';

/**
 * Joins the items of a list: `Herons`, `Herons and Plovers`, `Herons, Plovers and Terns`. As `figures`, the list has no
 * "and".
 */
export function sayList(items: readonly string[], as: 'names' | 'figures' = 'names'): string {
  return new Intl.ListFormat(writtenLanguage(), {
    type: as === 'names' ? 'conjunction' : 'unit',
  }).format(items);
}
