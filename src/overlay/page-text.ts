import { splitKey } from '../analyze/index.ts';
import type { WordKey } from '../analyze/types.ts';
import type { BlockWords, WordPlace } from './find-places.ts';
import type { Mark } from './mark-rules.ts';
import { own } from './own.ts';
import { PageWords } from './page-words.ts';
import { shadowOf } from './shadow-of.ts';
import { sortInPageOrder } from './sort-in-page-order.ts';
import type { TextBlock } from './text-blocks.ts';

/** The current mark of a word, with the same range objects that mark it. */
export interface PlaceMark {
  readonly standing: Mark;
  readonly ranges: readonly StaticRange[];
}

/** A block with its words and their marks. */
export interface ReadBlock {
  readonly nodes: readonly Text[];
  readonly within: Node;
  readonly words: BlockWords;
  /** The marks by the index of the word in the block. */
  marked: Map<number, PlaceMark> | undefined;
}

/** The text read from a page so far. It is kept by text node, so that a change replaces only the nodes it touches. */
export class PageText {
  /** The words, counted block by block. Reading the counts of a long page therefore costs almost nothing. */
  readonly words = new PageWords();
  readonly #byNode = new Map<Text, ReadBlock>();
  #skipped = 0;

  /** Adds the words of a block. Returns the earlier blocks of its nodes, whose marks must be removed. */
  read({ nodes, within }: TextBlock, words: BlockWords): { block: ReadBlock; replaced: ReadBlock[] } {
    const replaced = this.#drop(nodes);
    const block: ReadBlock = { nodes, within, words, marked: undefined };
    for (const node of nodes) this.#byNode.set(node, block);
    this.#count(block, 1);
    return { block, replaced };
  }

  /** Forgets all text under the nodes, except the blocks in `kept`, and returns the forgotten blocks. */
  forget(under: Iterable<Node>, kept: ReadonlySet<ReadBlock> = new Set()): ReadBlock[] {
    const texts = [...under].flatMap(textsUnder).filter((node) => !kept.has(this.#byNode.get(node)!));
    return this.#drop(texts);
  }

  has(node: Text): boolean {
    return this.#byNode.has(node);
  }

  /** Returns the block to which a text node belongs. */
  blockOf(node: Text): ReadBlock | undefined {
    return this.#byNode.get(node);
  }

  blocks(): Set<ReadBlock> {
    return new Set(this.#byNode.values());
  }

  inPageOrder(): ReadBlock[] {
    return sortInPageOrder(this.blocks(), ({ nodes }) => nodes[0]!);
  }

  /** Returns the distinct words with their counts, and the number of pieces that were left out. */
  count(): { words: [WordKey, number][]; skipped: number } {
    return { words: [...this.words.counts()], skipped: this.#skipped };
  }

  /** Returns the declared language of the first words, or an empty string if none is declared. */
  language(): string {
    const [first] = this.#byNode.keys();
    return first?.parentElement?.closest<HTMLElement>('[lang]')?.lang ?? '';
  }

  /** Returns every place of a word, in any case, in page order. */
  places(key: WordKey): WordPlace[] {
    const wanted = shown(key);
    return this.inPageOrder().flatMap(({ words }) =>
      words.places.filter((place) => shown(place.key) === wanted),
    );
  }

  #drop(nodes: Iterable<Text>): ReadBlock[] {
    const dropped = new Set<ReadBlock>();
    for (const node of nodes) {
      const block = this.#byNode.get(node);
      if (block) dropped.add(block);
    }
    for (const block of dropped) {
      for (const node of block.nodes) if (this.#byNode.get(node) === block) this.#byNode.delete(node);
      this.#count(block, -1);
    }
    return [...dropped];
  }

  #count({ words: { words, skipped } }: ReadBlock, by: 1 | -1): void {
    this.#skipped += by * skipped;
    for (const word of words) word.count += by;
  }
}

/** Returns the text nodes under a node and in its shadow roots. */
function textsUnder(root: Node): Text[] {
  const texts: Text[] = [];
  const waiting: Node[] = [root];
  for (let node = waiting.pop(); node; node = waiting.pop()) {
    if (node.nodeType === Node.TEXT_NODE) texts.push(node as Text);
    const { nodeType, firstChild } = own(node);
    const shadow = nodeType === Node.ELEMENT_NODE ? shadowOf(node as Element) : null;
    if (shadow) waiting.push(shadow);
    for (let child = firstChild; child; child = own(child).nextSibling) waiting.push(child);
  }
  return texts;
}

/** Returns the word of a key in lower case, without its reading. */
function shown(key: WordKey): string {
  return splitKey(key).word.toLowerCase();
}
