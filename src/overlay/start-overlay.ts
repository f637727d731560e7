import type { Standing, WordKey } from '../analyze/types.ts';
import { isRead } from './is-read.ts';
import { lineAround } from './line-around.ts';
import { markBlocks } from './mark-blocks.ts';
import { PageText, type ReadBlock } from './page-text.ts';
import { createPainter } from './paint-standings.ts';
import { createPointer } from './point-at.ts';
import { findTextBlocks, type TextBlock } from './text-blocks.ts';
import { type PageChange, watchPage } from './watch-page.ts';
import { nextTurn, workInSlices } from './work-in-slices.ts';

export interface OverlayOptions {
  /** One standing for each key, in order. */
  readonly judge: (keys: readonly WordKey[]) => Promise<readonly Standing[]>;
  /** Aborting takes every mark away and leaves the page as it was. */
  readonly signal: AbortSignal;
  /** The words of the page have changed since they were last asked for. */
  readonly onChange?: () => void;
}

/** Shading of one document. */
export interface Overlay {
  /** Distinct words with their counts. */
  words(): { title: string; url: string; words: [WordKey, number][]; skipped: number };
  /** Asks for all standings again: the group or what it was taught has changed. */
  rejudge(): Promise<void>;
  /** Scrolls to the n-th place of a word, counting on from the first after the last; false when it is nowhere. */
  goTo(place: { key: WordKey; n: number }): boolean;
  /** Settles when the page has been shaded once. */
  readonly ready: Promise<void>;
}

/**
 * Reads the visible text of a document, asks what each word is to the group, and marks the words that are not
 * plainly readable; what is in view comes first, changes of the page are followed, and the page is given its
 * turn every few milliseconds. The document's nodes are never touched.
 */
export function startOverlay(doc: Document, { judge, signal, onChange }: OverlayOptions): Overlay {
  const painter = createPainter(doc);
  const pointAt = createPointer(painter, signal);
  const text = new PageText();
  const standings = new Map<WordKey, Standing>();
  const marks = markBlocks(painter, standings, signal);
  let changed: PageChange[] = [];
  let busy: Promise<void> = Promise.resolve();

  const watch = watchPage((change) => {
    changed.push(change);
    if (changed.length === 1) inTurn(followChanges);
  }, signal);
  const enterShadow = (root: ShadowRoot): void => {
    if (signal.aborted) return;
    painter.adopt(root);
    watch(root);
  };
  signal.addEventListener('abort', () => void painter.clear(), { once: true });

  /** One work after the other; one that fails does not stop those behind it. */
  function inTurn(work: () => Promise<void>): Promise<void> {
    const done = busy.then(() => (signal.aborted ? undefined : work()));
    busy = done.catch(() => undefined);
    return done;
  }

  async function find(roots: Iterable<Node>): Promise<TextBlock[]> {
    const found: TextBlock[] = [];
    for (const root of roots)
      await workInSlices(findTextBlocks(root, enterShadow), (block) => found.push(block), signal);
    return found;
  }

  async function readAll(root: Node): Promise<void> {
    const found = await find([root]);
    const inView: TextBlock[] = [];
    const later: TextBlock[] = [];
    await workInSlices(found, (block) => (isInView(block) ? inView : later).push(block), signal);
    await readBlocks(inView);
    await readBlocks(later);
  }

  /** Reads and marks blocks; what stood in their place before is unmarked and given back with them. */
  async function readBlocks(
    blocks: readonly TextBlock[],
  ): Promise<{ read: Set<ReadBlock>; dropped: ReadBlock[] }> {
    const read = new Set<ReadBlock>();
    const dropped: ReadBlock[] = [];
    await workInSlices(
      blocks,
      (found) => {
        const { block, replaced } = text.read(found);
        replaced.forEach(marks.drop);
        dropped.push(...replaced);
        read.add(block);
      },
      signal,
    );
    await askFor(read);
    await workInSlices(read, marks.show, signal);
    return { read, dropped };
  }

  /** Asks once for each word not asked for before. */
  async function askFor(blocks: Iterable<ReadBlock>): Promise<void> {
    const keys = new Set<WordKey>();
    await workInSlices(
      blocks,
      ({ places }) => {
        for (const { key } of places) if (!standings.has(key)) keys.add(key);
      },
      signal,
    );
    if (keys.size === 0 || signal.aborted) return;
    const asked = [...keys];
    const answers = await judge(asked);
    for (const [i, key] of asked.entries()) standings.set(key, answers[i] ?? 'skipped');
  }

  async function followChanges(): Promise<void> {
    await nextTurn();
    const gone = new Set<Node>();
    const touched = new Set<Node>();
    for (const change of changed) {
      for (const node of change.gone) if (!node.isConnected) gone.add(node);
      for (const part of change.parts) touched.add(part);
    }
    changed = [];
    const parts = outermost(touched);
    const left = text.forget(gone);
    await workInSlices(left, marks.drop, signal);
    const { read, dropped } = await readBlocks(await find(parts));
    const hidden = text.forget(parts, read);
    await workInSlices(hidden, marks.drop, signal);
    await readBlocks(await find(linesOfOrphans([...left, ...dropped, ...hidden])));
    onChange?.();
  }

  /** A block that lost some of its text leaves the rest behind, to be read again by itself. */
  function linesOfOrphans(blocks: readonly ReadBlock[]): Node[] {
    const orphans = blocks
      .flatMap(({ nodes }) => nodes)
      .filter((node) => node.isConnected && !text.has(node) && isDrawn(node));
    return outermost(new Set(orphans.map(lineAround)));
  }

  async function rejudgeAll(): Promise<void> {
    standings.clear();
    const blocks = text.blocks();
    await askFor(blocks);
    await workInSlices(blocks, marks.refresh, signal);
  }

  watch(doc);
  const ready = inTurn(async () => {
    await nextTurn();
    await readAll(doc.body);
    onChange?.();
  });
  return {
    words: () => ({ title: doc.title, url: doc.URL, ...text.count() }),
    rejudge: () => inTurn(rejudgeAll),
    goTo: ({ key, n }) => {
      const places = text.places(key);
      if (places.length === 0) return false;
      pointAt(places[((n % places.length) + places.length) % places.length]!);
      return true;
    },
    ready,
  };
}

function isDrawn({ parentElement }: Text): boolean {
  return parentElement === null || isRead(parentElement) === 'all';
}

function isInView({ nodes }: TextBlock): boolean {
  const element = nodes[0]?.parentElement;
  const view = element?.ownerDocument.defaultView;
  if (!element || !view) return false;
  const { top, bottom } = element.getBoundingClientRect();
  return bottom > 0 && top < view.innerHeight;
}

/** Without nodes that have left the page or stand inside another of them. */
function outermost(nodes: ReadonlySet<Node>): Node[] {
  return [...nodes].filter((node) => {
    if (!node.isConnected) return false;
    for (let at = parentOf(node); at; at = parentOf(at)) if (nodes.has(at)) return false;
    return true;
  });
}

function parentOf(node: Node): Node | undefined {
  return node.parentNode ?? (node as Partial<ShadowRoot>).host;
}
