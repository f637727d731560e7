import { cutContext, cutText } from '../analyze/index.ts';
import type { WordKey } from '../analyze/types.ts';
import type { Homograph } from '../contract/page-contract.ts';
import { type PageWord, PageWords } from './page-words.ts';
import type { TextBlock } from './text-blocks.ts';

/** A word with its position on the page. */
export interface WordPlace {
  readonly key: WordKey;
  readonly word: PageWord;
  /** The ranges of the word, created anew on each access. A word that runs over inline elements has several. */
  readonly ranges: readonly StaticRange[];
}

/**
 * The words of one block with their positions in its text nodes. The data is kept in parallel arrays, because the
 * positions of most words are never requested.
 */
export class BlockWords {
  /** The words in page order. A homograph is replaced when its reading is known. */
  words: PageWord[] = [];
  /** The words whose keys do not tell their reading yet. */
  homographs: { readonly at: number; readonly homograph: Homograph }[] = [];
  /** The number of pieces that are left out of the count. */
  skipped = 0;
  readonly #block: TextBlock;
  /** The offset of each node in the text of the block, and the start and end offset of each word in turn. */
  readonly #nodes: readonly number[];
  #offsets: number[] = [];
  #places: readonly WordPlace[] | undefined;

  constructor(block: TextBlock, nodes: readonly number[]) {
    this.#block = block;
    this.#nodes = nodes;
  }

  add(word: PageWord, start: number, end: number): void {
    this.words.push(word);
    this.#offsets.push(start, end);
  }

  /** Frees the room that was kept for more words, and the homographs, whose readings are known now. */
  settle(): void {
    this.words = this.words.slice();
    this.#offsets = this.#offsets.slice();
    this.homographs = [];
  }

  get places(): readonly WordPlace[] {
    this.#places ??= this.words.map((_, at) => this.#place(at));
    return this.#places;
  }

  /** Returns only the wanted words. */
  only(isWanted: (place: WordPlace) => boolean): BlockWords {
    const kept = new BlockWords(this.#block, this.#nodes);
    const homographs = new Map(this.homographs.map(({ at, homograph }) => [at, homograph]));
    for (const [at, place] of this.places.entries()) {
      if (!isWanted(place)) continue;
      const homograph = homographs.get(at);
      if (homograph) kept.homographs.push({ at: kept.words.length, homograph });
      kept.add(place.word, this.#offsets[at * 2]!, this.#offsets[at * 2 + 1]!);
    }
    return kept;
  }

  rangesOf(at: number): StaticRange[] {
    const { nodes } = this.#block;
    const starts = this.#nodes;
    const start = this.#offsets[at * 2]!;
    const end = this.#offsets[at * 2 + 1]!;
    const ranges: StaticRange[] = [];
    const behind = starts.findIndex((one) => one > start);
    for (let i = (behind === -1 ? nodes.length : behind) - 1; i < nodes.length && starts[i]! < end; i++) {
      const node = nodes[i]!;
      const from = Math.max(start - starts[i]!, 0);
      const to = Math.min(end - starts[i]!, node.length);
      if (from < to)
        ranges.push(
          new StaticRange({ startContainer: node, startOffset: from, endContainer: node, endOffset: to }),
        );
    }
    return ranges;
  }

  #place(at: number): WordPlace {
    const all = this;
    return {
      get word() {
        return all.words[at]!;
      },
      get key() {
        return all.words[at]!.key;
      },
      get ranges() {
        return all.rangesOf(at);
      },
    };
  }
}

/** Returns the words of a block with their positions in its text nodes. */
export function findPlaces(block: TextBlock, known = new PageWords()): BlockWords {
  let all = new BlockWords(block, []);
  for (const words of findInPieces(block, known)) all = words;
  return all;
}

/**
 * Finds the words of a block piece by piece if the block is long (a book in one node). Yields all words found so far
 * each time.
 */
export function* findInPieces(block: TextBlock, known: PageWords): Generator<BlockWords> {
  const nodes: number[] = [];
  let text = '';
  for (const node of block.nodes) {
    const shown = shownText(node);
    const isBroken = block.broken?.has(node);
    // A line break in the source after the <br> is replaced by the inserted line break.
    const begins = isBroken && /^\s/.test(shown);
    if (isBroken && !begins) text += '\n';
    else if (block.parted.has(node)) text += ' ';
    nodes.push(text.length);
    text += begins ? `\n${shown.slice(1)}` : shown;
  }
  const found = new BlockWords(block, nodes);
  for (let from = 0, to = 0; from < text.length; from = to) {
    to = endOfPiece(text, from);
    for (const token of cutText(from === 0 && to === text.length ? text : text.slice(from, to))) {
      if (token.kind === 'skipped') {
        found.skipped++;
        continue;
      }
      const word = known.of(token.key);
      const start = from + token.start;
      const end = from + token.end;
      if (word.isHomograph)
        found.homographs.push({
          at: found.words.length,
          homograph: { key: word.key, ...cutContext(text, start, end) },
        });
      found.add(word, start, end);
    }
    yield found;
  }
}

/**
 * The number of characters that are split into words at once. The longest paragraph of a long article has about this
 * length, which takes some milliseconds.
 */
const PIECE = 20_000;

/** The place where a piece ends: the last end of a sentence in its second half, or else the last end of a word there. */
function endOfPiece(text: string, from: number): number {
  const furthest = from + PIECE;
  if (furthest >= text.length) return text.length;
  for (const end of ['\n\n', '. ', '.\n', ' ', '\n']) {
    const at = text.lastIndexOf(end, furthest - end.length);
    if (at > from + PIECE / 2) return at + end.length;
  }
  return furthest;
}

/**
 * Returns the text as shown. A line break in the source is a space on the page, unless a style keeps it (verse). The
 * length of the text stays the same.
 */
function shownText({ data, parentElement }: Text): string {
  if (!/[\n\r]/.test(data)) return data;
  const kept = parentElement && /pre|break/.test(getComputedStyle(parentElement).whiteSpace);
  return kept ? data : data.replace(/[\n\r]/g, ' ');
}
