import type { Reading } from '../../analyze/types.ts';
import { markWord } from '../../marks/mark-word.ts';
import type { SheetChoices } from './sheet-choices.ts';

/**
 * A word with the marks that were chosen: hop·ing, hōping, hōp·ing. A word that may be read in several ways (lead)
 * keeps plain letters where the ways differ, and so does one with marks of its own (Māori). The word a is plain too: in
 * a sentence it is weak, though it is listed by its name; I is not weak.
 */
export function markPrintWord(
  shown: string,
  readings: readonly Reading[],
  { dots, vowels }: Pick<SheetChoices, 'dots' | 'vowels'>,
): string {
  if (!dots && !vowels) return shown;
  if (!/^[A-Za-z'’-]+$/.test(shown) || /^a$/i.test(shown)) return shown;
  const marked = readings.map((reading) => {
    const full = markWord(shown, reading)
      .map(({ text }) => text)
      .join('');
    const spelt = vowels
      ? full
      : full
          .normalize('NFD')
          .replace(/[\u0304\u0306]/g, '')
          .normalize('NFC');
    return dots ? spelt : spelt.replaceAll('·', '');
  });
  return new Set(marked).size === 1 ? marked[0]! : shown;
}
