import type { Homograph, JudgeWords } from '../contract/page-contract.ts';
import type { Scope } from './choose-scope.ts';
import { type BlockWords, findInPieces } from './find-places.ts';
import { isRead } from './is-read.ts';
import { lineAround } from './line-around.ts';
import type { BlockMarks } from './mark-blocks.ts';
import { own } from './own.ts';
import type { PageText, ReadBlock } from './page-text.ts';
import type { PageWord, PageWords } from './page-words.ts';
import { findTextBlocks, type TextBlock } from './text-blocks.ts';
import { workInSlices } from './work-in-slices.ts';

/** The greatest number of blocks that are requested at once. An article has fewer. */
const AT_ONCE = 300;

/** Blocks that are read together, all near the view or all far from it. */
interface Portion {
  readonly blocks: readonly TextBlock[];
  readonly isNear: boolean;
}

/** The blocks that were read, and the blocks that they replaced. */
interface TakenBlocks {
  readonly read: ReadonlySet<ReadBlock>;
  readonly dropped: readonly ReadBlock[];
}

interface FoundBlock {
  readonly block: TextBlock;
  readonly words: BlockWords;
}

export interface PageReaderOptions {
  /** The text of the page. The reader fills it and keeps it up to date, including the standings of its words. */
  readonly text: PageText;
  readonly marks: BlockMarks;
  readonly judge: JudgeWords;
  readonly scope: () => Scope;
  readonly onShadow: (root: ShadowRoot) => void;
  readonly signal: AbortSignal;
}

/**
 * Reads a page in slices, requests the standings of its words, and has the words marked. Only one task may run at a
 * time.
 */
export interface PageReader {
  /** Reads paragraphs before the scope is known. `readAnew` forgets those that are outside the scope. */
  readEarly(paragraphs: readonly Element[]): Promise<void>;
  /** Reads all text in scope, starting with the text in view. Words keep their standings. */
  readAnew(): Promise<void>;
  /** Reads changed parts again and forgets removed nodes. Returns true when any of these nodes had text. */
  follow(touched: ReadonlySet<Node>, gone: ReadonlySet<Node>): Promise<boolean>;
  /**
   * Reads text that has become visible and forgets text that is no longer visible. Returns true if there was any such
   * text.
   */
  lookAgain(): Promise<boolean>;
  /** Requests all standings again, without reading the page. */
  rejudge(): Promise<void>;
}

/** Creates a reader for one document. */
export function createPageReader(
  doc: Document,
  { text, marks, judge, scope, onShadow, signal }: PageReaderOptions,
): PageReader {
  async function find(roots: Iterable<Node>): Promise<TextBlock[]> {
    const found: TextBlock[] = [];
    const keep = (block: TextBlock): void => {
      const narrowed = scope().narrow(block);
      if (narrowed) found.push(narrowed);
    };
    for (const root of roots) await workInSlices(findTextBlocks(root, onShadow), keep, signal);
    return found;
  }

  /** The blocks that were read before the scope was known. */
  let early: ReadonlySet<ReadBlock> = new Set();

  async function readEarly(paragraphs: readonly Element[]): Promise<void> {
    early = (await readBlocks(await find(paragraphs))).read;
  }

  /**
   * Reads all text but the blocks in `known`, starting with the text near the view. On a long page, text is read while
   * the walk through the page continues. All text is read even if the words of one portion cannot be judged; the
   * function rejects in that case. Known blocks outside the scope are forgotten.
   */
  async function readAll(known: ReadonlySet<ReadBlock>): Promise<void> {
    const kept = new Set<ReadBlock>();
    const near: TextBlock[] = [];
    const later: TextBlock[] = [];
    const faults: unknown[] = [];
    let isWalking = true;
    const next = (): Portion | null => {
      if (near.length > 0) return { blocks: near.splice(0), isNear: true };
      const isReady = later.length >= (isWalking ? AT_ONCE : 1);
      return isReady ? { blocks: later.splice(0, AT_ONCE), isNear: false } : null;
    };
    const read = (): Promise<void> => readPortions(next, (error) => faults.push(error));
    let begun: Promise<void> | undefined;
    const sort = (found: TextBlock): void => {
      const block = scope().narrow(found);
      if (!block) return;
      const before = text.blockOf(block.nodes[0]!);
      if (before && known.has(before) && isSame(before, block)) kept.add(before);
      else if (marks.isNear(block.within)) near.push(block);
      else if (later.push(block) >= AT_ONCE)
        begun ??= read().finally(() => {
          begun = undefined;
        });
    };
    await workInSlices(findTextBlocks(doc.body, onShadow), sort, signal);
    isWalking = false;
    await forget([...known].filter((block) => !kept.has(block)));
    await begun;
    await read();
    // The blocks far from the view have waited for each other, since settling goes through all capitals of the page.
    refresh(NONE, await settleCapitals());
    if (faults.length > 0) throw faults[0];
  }

  /**
   * Reads portion after portion. While the background judges one, the next is cut into words, and the one before is
   * marked. A fault in one portion is reported, and the other portions are read.
   */
  async function readPortions(next: () => Portion | null, onFault: (error: unknown) => void): Promise<void> {
    const begin = () => {
      const portion = next();
      if (!portion) return null;
      const cutting = cut(portion.blocks).catch((error: unknown) => {
        onFault(error);
        return [];
      });
      return { cutting, isNear: portion.isNear };
    };
    let taking: Promise<unknown> = Promise.resolve();
    for (let portion = begin(); portion; ) {
      const { isNear } = portion;
      const found = await portion.cutting;
      const asked = askFor(found).catch(onFault);
      portion = begin();
      await asked;
      taking = taking.then(() => take(found, isNear)).catch(onFault);
    }
    await taking;
  }

  async function readBlocks(blocks: readonly TextBlock[]): Promise<TakenBlocks> {
    const found = await cut(blocks);
    const asked = askFor(found);
    // Even without an answer, the new words are on the page and the replaced blocks are gone.
    await asked.catch(() => undefined);
    const taken = await take(found);
    await asked;
    return taken;
  }

  /** Cuts blocks into words. Words outside the scope are left out. */
  async function cut(blocks: readonly TextBlock[]): Promise<FoundBlock[]> {
    const all = new Map<TextBlock, BlockWords>();
    await workInSlices(findWords(blocks, text.words), ([block, soFar]) => all.set(block, soFar), signal);
    const { covers } = scope();
    return [...all].map(([block, words]) => ({ block, words: covers ? words.only(covers) : words }));
  }

  /**
   * Notes blocks as read, and marks them. They are all near the view or all far from it if `isNear` is given. The blocks
   * that they replace are unmarked and returned too.
   */
  async function take(found: readonly FoundBlock[], isNear?: boolean): Promise<TakenBlocks> {
    const read = new Set<ReadBlock>();
    const dropped: ReadBlock[] = [];
    const keep = (one: FoundBlock): void => {
      one.words.settle();
      const { block, replaced } = text.read(one.block, one.words);
      replaced.forEach(marks.drop);
      dropped.push(...replaced);
      read.add(block);
      marks.add(block, isNear);
    };
    await workInSlices(found, keep, signal);
    const settled = isNear === false ? NONE : await settleCapitals();
    // The blocks are marked only now. A mark between two reads would make the browser lay out the page again for the
    // next read.
    refresh(read, settled);
    return { read, dropped };
  }

  /** Marks the blocks, and all other blocks with words whose capitals were settled. */
  function refresh(read: ReadonlySet<ReadBlock>, settled: ReadonlySet<PageWord>): void {
    const isSettled = (word: PageWord): boolean => settled.has(word);
    marks.refresh(
      settled.size > 0 ? text.blocks() : read,
      (block) => read.has(block) || block.words.words.some(isSettled),
    );
  }

  /** Settles capitals. Names in these blocks may settle capitals anywhere on the page. */
  async function settleCapitals(): Promise<Set<PageWord>> {
    const changed = text.words.settle();
    const unknown = changed.filter(({ standing }) => standing === undefined);
    if (unknown.length > 0) await ask(unknown, []).catch(() => undefined);
    return new Set(changed);
  }

  /**
   * Requests the standing of each unknown word and the readings of homographs. The reading determines the key of a
   * homograph.
   */
  async function askFor(blocks: readonly FoundBlock[]): Promise<void> {
    const unknown = new Set<PageWord>();
    const open: { words: PageWord[]; at: number; homograph: Homograph }[] = [];
    const sort = ({ words: { words, homographs } }: FoundBlock): void => {
      for (const word of words) if (word.standing === undefined && !word.isHomograph) unknown.add(word);
      for (const one of homographs) open.push({ words, ...one });
    };
    await workInSlices(blocks, sort, signal);
    if (unknown.size + open.length === 0 || signal.aborted) return;
    const readings = await ask(
      [...unknown],
      open.map(({ homograph }) => homograph),
    );
    for (const [i, { key, standing }] of readings.entries()) {
      const word = text.words.of(key);
      word.standing = standing;
      const { words, at } = open[i]!;
      words[at] = word;
    }
  }

  async function ask(words: readonly PageWord[], homographs: readonly Homograph[]) {
    const answer = await judge({ keys: words.map(({ key }) => key), homographs });
    for (const [i, word] of words.entries()) word.standing = answer.standings[i] ?? 'skipped';
    return answer.readings;
  }

  async function readAnew(): Promise<void> {
    const known = early;
    early = new Set();
    await forget([...text.blocks()].filter((block) => !known.has(block)));
    await readAll(known);
  }

  async function forget(blocks: readonly ReadBlock[]): Promise<void> {
    const nodes = blocks.flatMap((block) => block.nodes);
    await workInSlices(text.forget(nodes), marks.drop, signal);
  }

  async function follow(touched: ReadonlySet<Node>, gone: ReadonlySet<Node>): Promise<boolean> {
    const parts = outermost(touched);
    const left = text.forget(gone);
    await workInSlices(left, marks.drop, signal);
    const { read, dropped } = await readBlocks(await find(parts));
    const hidden = text.forget(parts, read);
    await workInSlices(hidden, marks.drop, signal);
    await readBlocks(await find(linesOfOrphans([...left, ...dropped, ...hidden])));
    return left.length + read.size + hidden.length > 0;
  }

  async function lookAgain(): Promise<boolean> {
    const kept = new Set<ReadBlock>();
    const found = await find([doc.body]);
    const changedBlocks = found.filter((block) => {
      const known = text.blockOf(block.nodes[0]!);
      if (!known || !isSame(known, block)) return true;
      kept.add(known);
      return false;
    });
    const { read } = await readBlocks(changedBlocks);
    const hidden = text.forget([doc.body], new Set([...read, ...kept]));
    await workInSlices(hidden, marks.drop, signal);
    return changedBlocks.length + hidden.length > 0;
  }

  /** Returns the lines of the remaining text of blocks that lost some of their text. These lines must be read again. */
  function linesOfOrphans(blocks: readonly ReadBlock[]): Node[] {
    const orphans = blocks
      .flatMap(({ nodes }) => nodes)
      .filter((node) => node.isConnected && !text.has(node) && isDrawn(node));
    return outermost(new Set(orphans.map(lineAround)));
  }

  async function rejudge(): Promise<void> {
    text.words.forgetGone();
    await ask(text.words.present(), []);
    marks.refresh(text.blocks(), () => true);
  }

  return { readEarly, readAnew, follow, lookAgain, rejudge };
}

const NONE: ReadonlySet<never> = new Set();

function* findWords(blocks: Iterable<TextBlock>, known: PageWords): Generator<[TextBlock, BlockWords]> {
  for (const block of blocks) for (const words of findInPieces(block, known)) yield [block, words];
}

/** Returns whether a block that was read has the texts of a block that is found now. */
function isSame(read: ReadBlock, { nodes }: TextBlock): boolean {
  return read.nodes.length === nodes.length && nodes.every((node, i) => node === read.nodes[i]);
}

function isDrawn({ parentElement }: Text): boolean {
  return parentElement === null || isRead(parentElement) === 'all';
}

/** Returns the nodes that are in the page and not inside another of the nodes. */
function outermost(nodes: ReadonlySet<Node>): Node[] {
  return [...nodes].filter((node) => {
    if (!own(node).isConnected) return false;
    for (let at = parentOf(node); at; at = parentOf(at)) if (nodes.has(at)) return false;
    return true;
  });
}

function parentOf(node: Node): Node | undefined {
  return own(node).parentNode ?? (node as Partial<ShadowRoot>).host;
}
