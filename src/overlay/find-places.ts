import { cutContext, cutText, isHomograph, type SpanInContext } from '../analyze/index.ts';
import type { WordKey } from '../analyze/types.ts';
import type { TextBlock } from './text-blocks.ts';

/** One word where it stands; several ranges when it runs over inline elements. */
export interface WordPlace {
  readonly key: WordKey;
  readonly ranges: readonly StaticRange[];
}

/** A homograph whose reading its context may tell. */
export interface Homograph extends SpanInContext {
  readonly key: WordKey;
}

export interface BlockWords {
  readonly places: readonly WordPlace[];
  /** Pieces left out of the count. */
  readonly skipped: number;
}

/** Words as they are found: the keys of homographs do not tell their reading yet. */
export interface FoundWords extends BlockWords {
  readonly homographs: ReadonlyMap<WordPlace, Homograph>;
}

/** The words of a block with their ranges in its text nodes. */
export function findPlaces({ nodes, parted }: TextBlock): FoundWords {
  const starts: number[] = [];
  let text = '';
  for (const node of nodes) {
    if (parted.has(node)) text += ' ';
    starts.push(text.length);
    text += shownText(node);
  }
  const places: WordPlace[] = [];
  const homographs = new Map<WordPlace, Homograph>();
  let skipped = 0;
  let first = 0;
  for (const { kind, key, start, end } of cutText(text)) {
    if (kind === 'skipped') {
      skipped++;
      continue;
    }
    while (first + 1 < nodes.length && starts[first + 1]! <= start) first++;
    const ranges: StaticRange[] = [];
    for (let i = first; i < nodes.length && starts[i]! < end; i++) {
      const node = nodes[i]!;
      const from = Math.max(start - starts[i]!, 0);
      const to = Math.min(end - starts[i]!, node.length);
      if (from < to)
        ranges.push(
          new StaticRange({ startContainer: node, startOffset: from, endContainer: node, endOffset: to }),
        );
    }
    const place = { key, ranges };
    places.push(place);
    if (isHomograph(key)) homographs.set(place, { key, ...cutContext(text, start, end) });
  }
  return { places, homographs, skipped };
}

/** A line break in the source is a space on the page, unless a style keeps it (verse). Lengths stay the same. */
function shownText({ data, parentElement }: Text): string {
  if (!/[\n\r]/.test(data)) return data;
  const kept = parentElement && /pre|break/.test(getComputedStyle(parentElement).whiteSpace);
  return kept ? data : data.replace(/[\n\r]/g, ' ');
}
