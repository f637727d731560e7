import type { Standing, WordKey } from '../analyze/types.ts';
import { chooseScope, hasSelection, type Scope, type ScopeKind } from './choose-scope.ts';
import type { WordPlace } from './find-places.ts';
import { createWordFinder, type WordFinder } from './find-word.ts';
import { isRead } from './is-read.ts';
import { lineAround } from './line-around.ts';
import { type ForeignFrame, listForeignFrames } from './list-foreign-frames.ts';
import { markBlocks } from './mark-blocks.ts';
import { PageText, type ReadBlock } from './page-text.ts';
import { createPainter } from './paint-standings.ts';
import { createPointer } from './point-at.ts';
import { findTextBlocks, type TextBlock } from './text-blocks.ts';
import { watchDisplay } from './watch-display.ts';
import { type PageChange, watchPage } from './watch-page.ts';
import { nextTurn, workInSlices } from './work-in-slices.ts';

export interface OverlayOptions {
  /** One standing for each key, in order. */
  readonly judge: (keys: readonly WordKey[]) => Promise<readonly Standing[]>;
  /** What is checked first; left out, it is the main story where there is one. */
  readonly scope?: ScopeKind;
  /** Aborting takes every mark away and leaves the page as it was. */
  readonly signal: AbortSignal;
  /** The words of the page have changed since they were last asked for. */
  readonly onChange?: () => void;
}

/** What the overlay has read of a document. */
export interface OverlayWords {
  readonly title: string;
  readonly byline: string | null;
  readonly url: string;
  /** Distinct words with their counts. */
  readonly words: [WordKey, number][];
  readonly skipped: number;
  readonly scope: ScopeKind;
  /** Whether something is selected that could be checked instead. */
  readonly selection: boolean;
  /** Frames of other sites, which cannot be read from here. */
  readonly foreign: readonly ForeignFrame[];
  /** Whether a part rewrites itself without end and is not followed. */
  readonly restless: boolean;
}

/** Shading of one document. */
export interface Overlay {
  words(): OverlayWords;
  /** Checks another part of the page; gives the one that is checked then. */
  setScope(kind: ScopeKind): Promise<ScopeKind>;
  /** Asks for all standings again: the group or what it was taught has changed. */
  rejudge(): Promise<void>;
  /** Scrolls to the n-th place of a word, if there are so many; gives their number. */
  goTo(place: { key: WordKey; n: number }): number;
  readonly finder: WordFinder;
  /** What a word is to the group; undefined while that is not known. */
  standingOf(place: WordPlace): Standing | undefined;
  /** Brings one place into view and marks it for a moment. */
  pointAt(place: WordPlace): void;
  /** Settles when the page has been shaded once. */
  readonly ready: Promise<void>;
}

/**
 * Reads the visible text of a document, asks what each word is to the group, and marks the words that are not
 * plainly readable; what is in view comes first, changes of the page are followed, and the page is given its
 * turn every few milliseconds. The document's nodes are never touched.
 */
export function startOverlay(doc: Document, options: OverlayOptions): Overlay {
  const { judge, signal, onChange } = options;
  const painter = createPainter(doc);
  const pointAt = createPointer(painter, signal);
  const text = new PageText();
  const standings = new Map<WordKey, Standing>();
  const marks = markBlocks(painter, standings, signal);
  const shadowRoots = new Set<ShadowRoot>();
  let scope: Scope = chooseScope(doc, options.scope ?? null);
  let changed: PageChange[] = [];
  let restless = false;
  let busy: Promise<void> = Promise.resolve();

  const watch = watchPage((change) => {
    changed.push(change);
    if (changed.length === 1) inTurn(followChanges);
  }, signal);
  const enterShadow = (root: ShadowRoot): void => {
    if (signal.aborted) return;
    if (shadowRoots.has(root)) return;
    shadowRoots.add(root);
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
    const keep = (block: TextBlock): void => {
      const narrowed = scope.narrow(block);
      if (narrowed) found.push(narrowed);
    };
    for (const root of roots) await workInSlices(findTextBlocks(root, enterShadow), keep, signal);
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
        const { block, replaced } = text.read(found, scope.covers);
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

  /** Reads the page as if for the first time; what is known of its words stays known. */
  async function readAnew(): Promise<void> {
    changed = [];
    const nodes = [...text.blocks()].flatMap((block) => block.nodes);
    await workInSlices(text.forget(nodes), marks.drop, signal);
    await readAll(doc.body);
  }

  async function followChanges(): Promise<void> {
    await nextTurn();
    if (scope.isGone()) {
      scope = chooseScope(doc, null);
      await readAnew();
      onChange?.();
      return;
    }
    const gone = new Set<Node>();
    const touched = new Set<Node>();
    for (const change of changed) {
      for (const node of change.gone) if (!node.isConnected) gone.add(node);
      for (const node of change.restless) gone.add(node);
      for (const part of change.parts) touched.add(part);
      restless ||= change.restless.size > 0;
    }
    changed = [];
    for (const root of shadowRoots) if (!root.isConnected) shadowRoots.delete(root);
    const parts = outermost(touched);
    const left = text.forget(gone);
    await workInSlices(left, marks.drop, signal);
    const { read, dropped } = await readBlocks(await find(parts));
    const hidden = text.forget(parts, read);
    await workInSlices(hidden, marks.drop, signal);
    await readBlocks(await find(linesOfOrphans([...left, ...dropped, ...hidden])));
    onChange?.();
  }

  /** Reads what has come to be shown, and forgets what is no longer; what stands as it was is left alone. */
  async function lookAgain(): Promise<void> {
    const kept = new Set<ReadBlock>();
    const found = await find([doc.body]);
    const changedBlocks = found.filter(({ nodes }) => {
      const known = text.blockOf(nodes[0]!);
      const same = known?.nodes.length === nodes.length && nodes.every((node, i) => node === known.nodes[i]);
      if (known && same) kept.add(known);
      return !same;
    });
    const { read } = await readBlocks(changedBlocks);
    const hidden = text.forget([doc.body], new Set([...read, ...kept]));
    await workInSlices(hidden, marks.drop, signal);
    if (changedBlocks.length + hidden.length > 0) onChange?.();
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
  watchDisplay(doc, () => inTurn(lookAgain), signal);
  watchSelection(doc, () => onChange?.(), signal);
  const ready = inTurn(async () => {
    await nextTurn();
    await readAll(doc.body);
    onChange?.();
  });
  return {
    words: () => ({
      title: scope.kind === 'story' ? scope.title : doc.title,
      byline: scope.byline,
      url: doc.URL,
      ...text.count(),
      scope: scope.kind,
      selection: hasSelection(doc),
      foreign: listForeignFrames(doc, (frame) => scope.has(frame)),
      restless,
    }),
    setScope: (kind) => {
      scope = chooseScope(doc, kind);
      return inTurn(readAnew).then(() => {
        onChange?.();
        return scope.kind;
      });
    },
    rejudge: () => inTurn(rejudgeAll),
    finder: createWordFinder(doc, text, () => [...shadowRoots]),
    standingOf: ({ key }) => standings.get(key),
    pointAt,
    goTo: ({ key, n }) => {
      const places = text.places(key);
      if (places[n]) pointAt(places[n]);
      return places.length;
    },
    ready,
  };
}

/** Calls back when a selection is made or taken away. */
function watchSelection(doc: Document, onChange: () => void, signal: AbortSignal): void {
  let before = hasSelection(doc);
  const look = (): void => {
    const now = hasSelection(doc);
    if (now !== before) onChange();
    before = now;
  };
  doc.addEventListener('selectionchange', look, { signal });
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
