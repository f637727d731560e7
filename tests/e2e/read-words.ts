import { findPlaces } from '../../src/overlay/find-places.ts';
import { findTextBlocks } from '../../src/overlay/text-blocks.ts';

/** What the overlay reads under a node: all letters of its text, in small letters, and the keys of its words. */
export function readWords(root: Node): { letters: string; keys: string[] } {
  const blocks = [...findTextBlocks(root, () => undefined)];
  return {
    letters: blocks
      .flatMap(({ nodes }) => nodes.map(({ data }) => data.replace(/[^\p{L}]/gu, '').toLowerCase()))
      .join(''),
    keys: blocks.flatMap((block) => findPlaces(block).places.map(({ key }) => key)),
  };
}
