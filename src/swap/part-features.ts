import type { Piece } from './cut-words.ts';
import listed from './place-words.json' with { type: 'json' };

/** Words that, as neighbours, show the part of speech of the word beside them. */
const TELLING = new Set(listed.tellPart);

/**
 * Returns the class of a neighbour. The class is the word itself if the word tells much, otherwise the kind of the
 * word. `share` returns the shares of a word's parts of speech.
 */
export function neighbourClass(
  piece: Piece | undefined,
  share: (word: string) => readonly number[] | null,
): string {
  if (piece === undefined) return '#';
  const { lower } = piece;
  if (TELLING.has(lower)) return lower;
  if (/^\d/.test(lower)) return '0';
  if (!/^\p{L}/u.test(lower)) return '.';
  const shares = share(lower);
  if (shares === null) return '?';
  const kind = 'nvar'
    .split('')
    .filter((_, i) => shares[i]! >= 0.25)
    .join('');
  const ending = /(ed|ing|ly|s)$/.exec(lower)?.[1] ?? '';
  return `${kind}-${ending}`;
}

/**
 * Returns the features that show the part of speech of the word at `at`. The weights of the features are learnt
 * (`learn-parts.ts`).
 */
export function partFeatures(
  pieces: readonly Piece[],
  at: number,
  share: (word: string) => readonly number[] | null,
): string[] {
  const near = (offset: number): string => neighbourClass(pieces[at + offset], share);
  const [before2, before, after, after2] = [near(-2), near(-1), near(1), near(2)];
  const ending = /(ed|ing|ly|er|est|s)$/.exec(pieces[at]!.lower)?.[1] ?? '';
  return [
    `b${before}`,
    `a${after}`,
    `bb${before2}/${before}`,
    `ba${before}/${after}`,
    `aa${after}/${after2}`,
    `e${ending}`,
    `eb${ending}/${before}`,
    `ea${ending}/${after}`,
  ];
}
