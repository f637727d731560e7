import { cutContext, cutText } from '../analyze/index.ts';
import type { WordKey } from '../analyze/types.ts';
import type { Homograph } from '../contract/page-contract.ts';
import { type PageWord, PageWords } from './page-words.ts';
import type { TextBlock } from './text-blocks.ts';

/** A word at its place. */
export interface WordPlace {
  readonly key: WordKey;
  readonly word: PageWord;
  /** Made anew each time it is asked for; several when the word runs over inline elements. */
  readonly ranges: readonly StaticRange[];
}

/** The words of one block with their places in its text nodes. Lists beside each other, since most words are never asked where they stand. */
export class BlockWords {
  /** The word at each place, in order; replaced for a homograph when its reading is known. */
  readonly words: PageWord[] = [];
  /** The words whose keys do not tell their reading yet. */
  readonly homographs: { readonly at: number; readonly homograph: Homograph }[] = [];
  /** Pieces left out of the count. */
  skipped = 0;
  readonly #block: TextBlock;
  /** Where each node begins in the text of the block, and each word begins and ends in it. */
  readonly #nodes: readonly number[];
  readonly #starts: number[] = [];
  readonly #ends: number[] = [];
  #places: readonly WordPlace[] | undefined;

  constructor(block: TextBlock, nodes: readonly number[]) {
    this.#block = block;
    this.#nodes = nodes;
  }

  add(word: PageWord, start: number, end: number): void {
    this.words.push(word);
    this.#starts.push(start);
    this.#ends.push(end);
  }

  get places(): readonly WordPlace[] {
    this.#places ??= this.words.map((_, at) => this.#place(at));
    return this.#places;
  }

  /** Only those words that are wanted. */
  only(isWanted: (place: WordPlace) => boolean): BlockWords {
    const kept = new BlockWords(this.#block, this.#nodes);
    const homographs = new Map(this.homographs.map(({ at, homograph }) => [at, homograph]));
    for (const [at, place] of this.places.entries()) {
      if (!isWanted(place)) continue;
      const homograph = homographs.get(at);
      if (homograph) kept.homographs.push({ at: kept.words.length, homograph });
      kept.add(place.word, this.#starts[at]!, this.#ends[at]!);
    }
    return kept;
  }

  rangesOf(at: number): StaticRange[] {
    const { nodes } = this.#block;
    const starts = this.#nodes;
    const start = this.#starts[at]!;
    const end = this.#ends[at]!;
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

/** The words of a block with their places in its text nodes. */
export function findPlaces(block: TextBlock, known = new PageWords()): BlockWords {
  let all = new BlockWords(block, []);
  for (const words of findInPieces(block, known)) all = words;
  return all;
}

/** The words of a block, found piece by piece where it is long (a book in one node): each time all that were found so far. */
export function* findInPieces(block: TextBlock, known: PageWords): Generator<BlockWords> {
  const nodes: number[] = [];
  let text = '';
  for (const node of block.nodes) {
    const shown = shownText(node);
    const isBroken = block.broken?.has(node);
    // A line break in the source behind the <br> takes the place of the one that is put in.
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

/** So much is cut into words at once, in characters: a long article's longest paragraph, some milliseconds of work. */
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

/** A line break in the source is a space on the page, unless a style keeps it (verse). Lengths stay the same. */
function shownText({ data, parentElement }: Text): string {
  if (!/[\n\r]/.test(data)) return data;
  const kept = parentElement && /pre|break/.test(getComputedStyle(parentElement).whiteSpace);
  return kept ? data : data.replace(/[\n\r]/g, ' ');
}
