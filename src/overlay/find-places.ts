import { cutContext, cutText, isHomograph, type SpanInContext } from '../analyze/index.ts';
import type { WordKey } from '../analyze/types.ts';
import type { TextBlock } from './text-blocks.ts';

/** One word where it stands. */
export interface WordPlace {
  readonly key: WordKey;
  /** Made anew each time it is asked for; several when the word runs over inline elements. */
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

/** Words as they are found. */
export interface FoundWords extends BlockWords {
  readonly places: readonly FoundPlace[];
  /** Those whose keys do not tell their reading yet. */
  readonly homographs: readonly { readonly place: FoundPlace; readonly homograph: Homograph }[];
}

/** The texts of a block, and where each begins in the whole of it. */
interface BlockTexts {
  readonly nodes: readonly Text[];
  readonly starts: readonly number[];
}

/** A word by its place in the text of its block: ranges are dear, and most words of a page are never marked. */
class FoundPlace implements WordPlace {
  /** Changed once, when the reading of a homograph becomes known. */
  key: WordKey;
  readonly #texts: BlockTexts;
  readonly #start: number;
  readonly #end: number;

  constructor(key: WordKey, texts: BlockTexts, start: number, end: number) {
    this.key = key;
    this.#texts = texts;
    this.#start = start;
    this.#end = end;
  }

  get ranges(): readonly StaticRange[] {
    const { nodes, starts } = this.#texts;
    const ranges: StaticRange[] = [];
    const behind = starts.findIndex((start) => start > this.#start);
    for (
      let i = (behind === -1 ? nodes.length : behind) - 1;
      i < nodes.length && starts[i]! < this.#end;
      i++
    ) {
      const node = nodes[i]!;
      const from = Math.max(this.#start - starts[i]!, 0);
      const to = Math.min(this.#end - starts[i]!, node.length);
      if (from < to)
        ranges.push(
          new StaticRange({ startContainer: node, startOffset: from, endContainer: node, endOffset: to }),
        );
    }
    return ranges;
  }
}

/** The words of a block with their places in its text nodes. */
export function findPlaces(block: TextBlock): FoundWords {
  let all: FoundWords = { places: [], homographs: [], skipped: 0 };
  for (const words of findInPieces(block)) all = words;
  return all;
}

/** The words of a block, found piece by piece where it is long (a book in one node): each time all that were found so far. */
export function* findInPieces({ nodes, parted }: TextBlock): Generator<FoundWords> {
  const starts: number[] = [];
  let text = '';
  for (const node of nodes) {
    if (parted.has(node)) text += ' ';
    starts.push(text.length);
    text += shownText(node);
  }
  const texts = { nodes, starts };
  const places: FoundPlace[] = [];
  const homographs: { place: FoundPlace; homograph: Homograph }[] = [];
  let skipped = 0;
  for (let from = 0, to = 0; from < text.length; from = to) {
    to = endOfPiece(text, from);
    for (const token of cutText(from === 0 && to === text.length ? text : text.slice(from, to))) {
      if (token.kind === 'skipped') {
        skipped++;
        continue;
      }
      const { key } = token;
      const start = from + token.start;
      const end = from + token.end;
      const place = new FoundPlace(key, texts, start, end);
      places.push(place);
      if (isHomograph(key)) homographs.push({ place, homograph: { key, ...cutContext(text, start, end) } });
    }
    yield { places, homographs, skipped };
  }
}

/** So much is cut into words at once, in characters: a long article's longest paragraph, some milliseconds of work. */
const PIECE = 20_000;

/** Where a piece ends: behind a sentence, or else a word, where there is one in its second half. */
function endOfPiece(text: string, from: number): number {
  const furthest = from + PIECE;
  if (furthest >= text.length) return text.length;
  for (const end of ['\n\n', '. ', '.\n', ' ', '\n']) {
    const at = text.lastIndexOf(end, furthest - end.length);
    if (at > from + PIECE / 2) return at + end.length;
  }
  return furthest;
}

/** A line break in the source is a space on the page, unless a style keeps it (verse). Lengths stay the same. */
function shownText({ data, parentElement }: Text): string {
  if (!/[\n\r]/.test(data)) return data;
  const kept = parentElement && /pre|break/.test(getComputedStyle(parentElement).whiteSpace);
  return kept ? data : data.replace(/[\n\r]/g, ' ');
}
