import { catalogue } from '../../analyze/index.ts';
import type { Pattern } from '../../analyze/types.ts';
import { soundName } from '../../marks/sound-names.ts';

/** Rows of the catalogue that can be taught. `irregular` cannot: it names what no pattern covers. */
export const teachable: readonly Pattern[] = catalogue.filter(({ id }) => id !== 'irregular');

/**
 * Patterns for what a teacher types, best first: letters (`ai`, `a_e`, `-ing`, `un-`), a sound between strokes or as
 * dictionaries write it (`/k/`, `ā`, `long a`), a key word or example (`rain`), words of the label or family
 * (`digraph`). All of several words must fit. An empty search gives everything, in the order of the catalogue.
 */
export function searchPatterns(typed: string): readonly Pattern[] {
  const wanted = typed
    .toLowerCase()
    .replace(/[“”"(),;]/g, ' ')
    .replace(/[\u2010-\u2015]/g, '-')
    .split(/\s+/);
  const words = wanted.filter((word) => word !== '');
  return teachable
    .map((pattern, row) => ({ pattern, row, rank: rankAll(pattern, words) }))
    .filter(({ rank }) => rank > 0)
    .toSorted((a, b) => b.rank - a.rank || a.row - b.row)
    .map(({ pattern }) => pattern);
}

function rankAll(pattern: Pattern, words: readonly string[]): number {
  if (words.length === 0) return 1;
  const ranks = words.map((word) => rank(pattern, word));
  return ranks.includes(0) ? 0 : ranks.reduce((sum, one) => sum + one, 0);
}

function rank({ id, family, label, letters, sounds, keyWord, examples }: Pattern, word: string): number {
  if (word.length > 2 && word.startsWith('/') && word.endsWith('/')) {
    return hasSound(sounds, word.slice(1, -1)) ? 6 : 0;
  }
  const spelt = word.replace(/^-+|-+$/g, '').replace(/^([a-z])-e$/, '$1_e');
  if (spelt !== '' && letters.split(' ').includes(spelt)) {
    if (isAffix(family)) return /^-|-$/.test(word) ? 8 : 5;
    return 7;
  }
  if (id === word || keyWord === word) return 6;
  if (hasSound(sounds, word)) return 5;
  if (examples.includes(word)) return 4;
  const text = `${label} ${family} ${id.replaceAll('-', ' ')}`.toLowerCase();
  if (text.split(/[\s-]+/).some((part) => part.startsWith(word))) return 3;
  return word.length > 2 && text.includes(word) ? 1 : 0;
}

/** `ā` and `k` by the dictionary's sign; by letters only what is told apart by them. */
function hasSound(sounds: readonly string[], wanted: string): boolean {
  return sounds.some((sound) => soundName(sound) === wanted.normalize('NFC'));
}

function isAffix(family: string): boolean {
  return family === 'suffix' || family === 'prefix';
}
