import { spokenLanguage } from '../wording/say.ts';

/** `Herons`, `Herons and Plovers`, `Herons, Plovers and Terns`; as `figures` without the "and". */
export function sayList(items: readonly string[], as: 'names' | 'figures' = 'names'): string {
  const language = spokenLanguage();
  return new Intl.ListFormat(language === 'en' ? 'en-GB' : language, {
    type: as === 'names' ? 'conjunction' : 'unit',
  }).format(items);
}
