import type { JudgeWords, ScopeKind, ShadedPage, Shown, WordInSentence } from '../contract/page-contract.ts';
import { chooseScope, hasSelection, type Scope, wholePage } from './choose-scope.ts';
import type { OpenVeil } from './draw-veil.ts';
import type { FindArticle } from './find-article.ts';
import { findParagraphsInView } from './find-paragraphs-in-view.ts';
import type { WordPlace } from './find-places.ts';
import { findSentence } from './find-sentence.ts';
import { createWordFinder, type WordFinder } from './find-word.ts';
import { keepMarks } from './keep-marks.ts';
import { loadUnreadText } from './load-unread-text.ts';
import { markBlocks } from './mark-blocks.ts';
import { createOverlayState } from './overlay-state.ts';
import { PageText } from './page-text.ts';
import { createPainter } from './paint-standings.ts';
import { createPointer } from './point-at.ts';
import { createPageReader } from './read-page.ts';
import { takePassage } from './take-passage.ts';
import { watchDisplay } from './watch-display.ts';
import { watchPage } from './watch-page.ts';
import type { WatchUnreadText } from './watch-unread-text.ts';
import { whenParsed } from './when-parsed.ts';
import { nextTurn, whenDrawn } from './work-in-slices.ts';

export interface OverlayOptions {
  readonly judge: JudgeWords;
  /** Loads `findArticle`, which is large and not needed on every page. */
  readonly loadFindArticle: () => Promise<FindArticle>;
  /** Loads `openVeil`, which is needed when the page must not see the marks. */
  readonly loadVeil?: () => Promise<OpenVeil>;
  /** Loads `watchUnreadText`, which is needed when the words are counted. */
  readonly loadWatchUnread: () => Promise<WatchUnreadText>;
  /** The scope that is checked first. By default, the main story if there is one. */
  readonly scope?: ScopeKind;
  /** Aborting removes all marks and leaves the page as it was. */
  readonly signal: AbortSignal;
  /** Called when the words of the page have changed since they were last requested. */
  readonly onChange?: () => void;
}

/** Shading of one document. */
export interface Overlay extends Omit<ShadedPage, 'step'> {
  readonly finder: WordFinder;
  /** The standing of a word; undefined while it is not known. */
  standingOf(place: WordPlace): Shown | undefined;
  /** Returns the sentence that contains a word, or null if the page has changed in the meantime. */
  sentenceOf(place: WordPlace): WordInSentence | null;
  /** Scrolls one place into view and marks it for a moment. */
  pointAt(place: WordPlace): void;
}

/**
 * Reads the visible text of a document, requests the standing of each word, and marks the words that are not plainly
 * readable. The words in view come first. Changes of the page are followed. The page can run every few milliseconds.
 * The document's nodes are never changed.
 */
export function startOverlay(doc: Document, options: OverlayOptions): Overlay {
  const { judge, loadFindArticle, loadVeil, signal } = options;
  const onChange = (): void => {
    unread.forget();
    options.onChange?.();
  };
  const state = createOverlayState(onChange, signal);
  const { inTurn } = state;
  const text = new PageText();
  const painter = createPainter(doc);
  const pointAt = createPointer(painter, signal);
  const marks = markBlocks(painter, signal);
  const noteTakenAway = (): void => {
    state.noteTakenAway();
    onChange();
  };
  const hideMarks = (): void =>
    void painter.hide(async (marked) => (await loadVeil!())(doc, marked, signal)).catch(noteTakenAway);
  // A script that removes the marks may also read them.
  const keeper = keepMarks(painter, loadVeil ? hideMarks : noteTakenAway, signal);
  const shadowRoots = new Set<ShadowRoot>();
  const unread = loadUnreadText(options.loadWatchUnread, (watchUnread) =>
    watchUnread(
      doc,
      () => text.blocks(),
      (frame) => scope.has(frame),
      signal,
    ),
  );
  let scope: Scope = wholePage(doc);
  const frames = doc.getElementsByTagName('iframe');
  let known = frames.length;

  const watch = watchPage(
    (change) => {
      const isFirst = state.add(change);
      keeper.look();
      if (isFirst) inTurn(followChanges);
    },
    () => {
      marks.noteChange();
      unread.forget();
    },
    signal,
  );
  const enterShadow = (root: ShadowRoot): void => {
    if (signal.aborted || shadowRoots.has(root)) return;
    shadowRoots.add(root);
    painter.adopt(root);
    watch(root);
  };
  const reader = createPageReader(doc, {
    text,
    marks,
    judge,
    scope: () => scope,
    onShadow: enterShadow,
    signal,
  });
  signal.addEventListener('abort', () => void painter.clear());

  /** Reads the whole scope. Earlier faults are forgotten. */
  function readAnew(): Promise<void> {
    state.forgetFault();
    return reader.readAnew();
  }

  /** Marks paragraphs before the story is found. Returns the function that finds it, which is loaded meanwhile. */
  async function readEarly(paragraphs: readonly Element[]): Promise<typeof loadFindArticle> {
    const loading = loadFindArticle();
    loading.catch(() => undefined);
    await reader.readEarly(paragraphs).catch(() => undefined);
    await whenDrawn();
    return () => loading;
  }

  async function followChanges(): Promise<void> {
    await nextTurn();
    const { touched, gone, isGivenUp } = state.take();
    // A part that keeps showing other words may be testing which of them are marked.
    if (isGivenUp && loadVeil) hideMarks();
    // The words of a removed frame are no longer counted.
    const isFrameGone = frames.length < known;
    known = frames.length;
    for (const root of shadowRoots) if (!root.isConnected) shadowRoots.delete(root);
    if (scope.isGone()) {
      scope = await chooseScope(doc, null, loadFindArticle);
      await readAnew();
      onChange();
    } else if ((await reader.follow(touched, gone)) || isGivenUp || isFrameGone) onChange();
  }

  async function lookAgain(): Promise<boolean> {
    let isOther = false;
    await inTurn(async () => {
      isOther = await reader.lookAgain();
    });
    if (isOther) onChange();
    return isOther;
  }

  function sentenceOf(place: WordPlace): WordInSentence | null {
    const block = text.blockOf(place.ranges[0]?.startContainer as Text);
    return block ? findSentence(block, place) : null;
  }

  addEventListener('beforeprint', () => marks.markAll(text.blocks(), true), { signal });
  addEventListener('afterprint', () => marks.markAll(text.blocks(), false), { signal });
  watch(doc);
  watchDisplay(doc, lookAgain, signal);
  watchSelection(doc, onChange, signal);
  const read = inTurn(async () => {
    await whenParsed(doc, signal);
    await nextTurn();
    const paragraphs = options.scope ? [] : findParagraphsInView(doc);
    // Finding the story keeps the page busy for a while. The paragraphs in view are marked before.
    const loadFound = paragraphs.length > 0 ? await readEarly(paragraphs) : loadFindArticle;
    scope = await chooseScope(doc, options.scope ?? null, loadFound);
    // This part is put into the page while the page is read, since the words are asked for right after.
    unread.load();
    await readAnew();
    onChange();
  });
  const ready = read.then(marks.whenMarked);
  // A frame does not wait for this promise, so its fault is no unhandled one.
  ready.catch(() => undefined);
  return {
    words: async () => ({
      ...(await unread.look()),
      title: scope.kind === 'story' ? scope.title : doc.title,
      byline: scope.byline,
      date: scope.date,
      url: doc.URL,
      ...text.count(),
      scope: scope.kind,
      selection: hasSelection(doc),
      ...state.troubles(),
      language: text.language(),
    }),
    setScope: (kind) => {
      const chosen = chooseScope(doc, kind, loadFindArticle);
      return inTurn(async () => {
        scope = await chosen;
        await readAnew();
      }).then(() => {
        onChange();
        return scope.kind;
      });
    },
    rejudge: () =>
      inTurn(() => {
        state.forgetFault();
        return reader.rejudge();
      }).then(marks.whenMarked),
    finder: createWordFinder(doc, text, () => [...shadowRoots]),
    standingOf: ({ word }) => word.standing,
    sentence: ({ key, n }) => {
      const places = text.places(key);
      const place = places[n % places.length];
      return place ? sentenceOf(place) : null;
    },
    sentenceOf,
    setLook: painter.setLook,
    hideMarks,
    takePassage: () => takePassage(doc, scope, signal),
    pointAt,
    goTo: ({ key, n }) => {
      const places = text.places(key);
      if (places[n]) pointAt(places[n]);
      return places.length;
    },
    read,
    ready,
  };
}

/** Calls `onChange` when a selection is made or removed. */
function watchSelection(doc: Document, onChange: () => void, signal: AbortSignal): void {
  let before = hasSelection(doc);
  const look = (): void => {
    const now = hasSelection(doc);
    if (now !== before) onChange();
    before = now;
  };
  doc.addEventListener('selectionchange', look, { signal });
}
