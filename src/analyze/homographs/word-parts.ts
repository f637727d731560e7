import { classOf, PART_BY_ENDING } from './word-classes.ts';
import parts from './word-parts.json' with { type: 'json' };

/** Created for the first homograph in a text, so that no page or background waits for this map when it starts. */
let known: ReadonlyMap<string, string> | undefined;

function readParts(): ReadonlyMap<string, string> {
  return new Map(
    Object.entries(parts).flatMap(([part, words]) => words.split(' ').map((word) => [word, part] as const)),
  );
}

/**
 * Returns the class of a piece of a context. The class of a small word is its own name (`article`, `to`). The class of
 * any other word is its parts of speech, the usual one first: n noun, N plural, v verb, z verb with -s, d past, e
 * participle, g -ing, a adjective, r adverb, x not known. So `work` is nv, `went` d, `sunny` a.
 * Parts of speech were counted in the Brown corpus (src/data/homographs/learn-from-brown.ts). Only words whose ending
 * says otherwise are listed.
 */
export function partsOf(piece: string | undefined, first: boolean): string {
  if (piece === undefined || first) return findParts(piece, first);
  const before = met.get(piece);
  if (before !== undefined) return before;
  const found = findParts(piece, first);
  if (met.size >= MOST) met.clear();
  met.set(piece, found);
  return found;
}

/** A cache of the parts of speech of pieces inside sentences. The same few hundred pieces are around most homographs. */
const met = new Map<string, string>();
const MOST = 4000;

function findParts(piece: string | undefined, first: boolean): string {
  const one = classOf(piece, first);
  if (piece === undefined || one === 'name') return one;
  const byEnding = PART_BY_ENDING[one];
  if (byEnding === undefined && one !== 'other') return one;
  known ??= readParts();
  return known.get(piece.toLowerCase()) ?? byEnding ?? 'x';
}
