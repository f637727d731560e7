import type { Affix } from '../../analyze/types.ts';

/**
 * Returns the spellings of a base and an ending by the wrong rule: hopeing and hopping for hoping, runing for running,
 * cryed for cried. A spelling that exists as a word, as `isWord` tells, is left out.
 */
export function wrongSpellings(
  base: string,
  { text, kind }: Affix,
  right: string,
  isWord: (spelling: string) => boolean,
): string[] {
  if (kind !== 'suffix') return [];
  const spellings = [base + text];
  if (/e$/.test(base)) spellings.push(base.slice(0, -1) + text);
  if (/[^aeiou]y$/.test(base)) spellings.push(`${base.slice(0, -1)}i${text}`);
  if (/[aeiou][bdfgklmnprt]$/.test(base) && /^[aeiouy]/.test(text)) spellings.push(base + base.at(-1) + text);
  return [...new Set(spellings)].filter((spelling) => spelling !== right && !isWord(spelling));
}
