import type { Reading } from '../../analyze/types.ts';
import { markWord } from '../../marks/mark-word.ts';
import type { SheetChoices } from './sheet-choices.ts';

/**
 * Writes a word with the chosen marks: hop·ing, hōping, hōp·ing. If a word has several readings (lead), the letters
 * stay plain where the readings differ. A word with its own marks (Māori) stays plain. The word “a” stays plain too: it
 * is weak in a sentence, although the dictionary lists the name of the letter. The word “I” is not weak.
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
