import { splitKey } from '../analyze/index.ts';
import type { WordKey } from '../analyze/types.ts';
import type { BlockWords, WordPlace } from './find-places.ts';
import type { Mark } from './mark-rules.ts';
import { own } from './own.ts';
import { PageWords } from './page-words.ts';
import { shadowOf } from './shadow-of.ts';
import { sortInPageOrder } from './sort-in-page-order.ts';
import type { TextBlock } from './text-blocks.ts';

/** How a word is marked at present, and the very ranges that mark it. */
export interface PlaceMark {
  readonly standing: Mark;
  readonly ranges: readonly StaticRange[];
}

/** A block with its words, and the marks of those that have one. */
export interface ReadBlock {
  readonly nodes: readonly Text[];
  readonly within: Node;
  readonly words: BlockWords;
  /** By the place of the word among the others. */
  readonly marked: Map<number, PlaceMark>;
}

/** The text read from a page so far. It is kept by text node, so that a change replaces only the nodes it touches. */
export class PageText {
  /** Counted block by block, so that asking for the counts of a long page costs next to nothing. */
  readonly words = new PageWords();
  readonly #byNode = new Map<Text, ReadBlock>();
  #skipped = 0;

  /** Takes in the words of a block; the blocks its nodes were in before are given back, to be unmarked. */
  read({ nodes, within }: TextBlock, words: BlockWords): { block: ReadBlock; replaced: ReadBlock[] } {
    const replaced = this.#drop(nodes);
    const block: ReadBlock = { nodes, within, words, marked: new Map() };
    for (const node of nodes) this.#byNode.set(node, block);
    this.#count(block, 1);
    return { block, replaced };
  }

  /** Forgets all text under the nodes that is not among `kept`, and gives back its blocks. */
  forget(under: Iterable<Node>, kept: ReadonlySet<ReadBlock> = new Set()): ReadBlock[] {
    const texts = [...under].flatMap(textsUnder).filter((node) => !kept.has(this.#byNode.get(node)!));
    return this.#drop(texts);
  }

  has(node: Text): boolean {
    return this.#byNode.has(node);
  }

  /** The block a text node was read in. */
  blockOf(node: Text): ReadBlock | undefined {
    return this.#byNode.get(node);
  }

  blocks(): Set<ReadBlock> {
    return new Set(this.#byNode.values());
  }

  inPageOrder(): ReadBlock[] {
    return sortInPageOrder(this.blocks(), ({ nodes }) => nodes[0]!);
  }

  /** Distinct words with their counts, and how many pieces were left out. */
  count(): { words: [WordKey, number][]; skipped: number } {
    return { words: [...this.words.counts()], skipped: this.#skipped };
  }

  /** The language its first words are said to be in; empty where nothing is said of it. */
  language(): string {
    const [first] = this.#byNode.keys();
    return first?.parentElement?.closest<HTMLElement>('[lang]')?.lang ?? '';
  }

  /** Every place of a word, in any case, in page order. */
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

/** Text nodes under a node and in its shadow roots. */
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

/** The word of a key, however it is written and read. */
function shown(key: WordKey): string {
  return splitKey(key).word.toLowerCase();
}
