import type { Sequences } from '../../host/store/sequences-store.ts';

/**
 * Returns the language a sequence is written in: English if it comes with Wordreach, unknown if it comes from the
 * teacher or the school.
 */
export function languageOf(id: string, { starters, school }: Sequences): 'en' | undefined {
  return starters.some((starter) => starter.id === id) && !school.includes(id) ? 'en' : undefined;
}
