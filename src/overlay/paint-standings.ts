import type { Look, Shown } from '../contract/page-contract.ts';
import type { Marked, Veil } from './draw-veil.ts';
import { createInkFinder } from './find-ink.ts';
import {
  HEADINGS,
  type Ink,
  type InkMark,
  inheritsMarks,
  MARKS,
  type Mark,
  markRules,
  WASHES,
} from './mark-rules.ts';
import { own } from './own.ts';
import { nextTurn, workInSlices } from './work-in-slices.ts';

/** The greatest number of inks, since each ink needs its own rules. Letters in further inks get no marks. */
const MOST_INKS = 12;

/** Returns whether words of a standing have a mark. Other words look as the page shows them. */
export function isMarked(standing: Shown): standing is Shown & Mark {
  return standing in MARKS;
}

/** Marks ranges of one document without touching its nodes. */
export interface Painter {
  add(mark: Mark, ranges: readonly StaticRange[]): void;
  remove(mark: Mark, ranges: readonly StaticRange[]): void;
  /** Marks one word as the place looked for. An empty list removes the mark. */
  pointTo(ranges: readonly StaticRange[]): void;
  /** Adds the rules to a shadow root, which does not get the rules of its document in every browser. */
  adopt(root: ShadowRoot): void;
  /** Changes the look of all marks. */
  setLook(look: Look): void;
  /**
   * Removes the marks from the view of the page's scripts for good. The veil that `open` returns draws the marks
   * instead. Rejects if `open` fails.
   */
  hide(open: (marked: () => Marked) => Promise<Veil>): Promise<void>;
  /** Holds back the marks that are added and removed from now on until `show`. Showing all of them at once is cheaper. */
  hold(): void;
  show(): void;
  /** Restores the marks and rules that the page removed. Returns false when nothing was missing. */
  restore(): boolean;
  /** Removes all marks and rules, in slices. */
  clear(): Promise<void>;
}

/**
 * All ranges of one highlight. The ranges are also kept in a set, because Firefox does not let a content script iterate
 * over a highlight.
 */
interface Painted {
  readonly mark: Mark;
  readonly name: string;
  readonly marks: Highlight;
  readonly ranges: Set<StaticRange>;
}

/** A painter over the CSS Custom Highlight API (CSS Custom Highlight API Module Level 1). */
export function createPainter(doc: Document): Painter {
  const findInk = createInkFinder();
  const sheet = new CSSStyleSheet();
  let look: Look = 'wash';
  /** The letter size of the page's text. Undefined before the first mark, and where marks are not inherited. */
  let size: number | undefined;
  const inkMarks: InkMark[] = [];
  /** The highlight of each range whose letters have an ink. */
  const inked = new WeakMap<StaticRange, Painted>();
  // The roots are held weakly. A shadow root keeps its host alive, and the host keeps alive the whole part that the
  // page removed.
  const roots: WeakRef<Document | ShadowRoot>[] = [];
  const known = new WeakSet<Document | ShadowRoot>();
  const highlights = new Map<string, Painted>();
  let isHidden = false;
  /** The marks that were added or removed since `hold`. Undefined if marks are shown at once. */
  let held: [Painted, StaticRange][] | undefined;
  let veil: Veil | undefined;

  function adopt(root: Document | ShadowRoot): void {
    if (isHidden || known.has(root)) return;
    known.add(root);
    root.adoptedStyleSheets = [...root.adoptedStyleSheets, sheet];
    roots.push(new WeakRef(root));
  }
  function writeRules(): void {
    sheet.replaceSync(markRules(look, inkMarks, size));
  }
  function dropRules(): void {
    for (const ref of roots) {
      const root = ref.deref();
      if (root) root.adoptedStyleSheets = root.adoptedStyleSheets.filter((one) => one !== sheet);
    }
  }
  function highlight(mark: Mark, name: string = MARKS[mark]): Painted {
    let found = highlights.get(name);
    if (!found) {
      found = { mark, name, marks: createHighlight(mark), ranges: new Set() };
      highlights.set(name, found);
    }
    return found;
  }
  function unregister({ name, marks }: Painted): void {
    if (CSS.highlights.get(name) === marks) CSS.highlights.delete(name);
  }
  function register({ name, marks }: Painted): boolean {
    if (isHidden || CSS.highlights.get(name) === marks) return false;
    // The sheet is added only with the first mark, because the browser then recomputes all styles of the page, and
    // the first reading needs the styles.
    if (!known.has(doc)) {
      if (inheritsMarks(navigator.userAgent)) size = sizeOfText(highlights.values());
      writeRules();
      adopt(doc);
    }
    CSS.highlights.set(name, marks);
    return true;
  }
  /** Adds a range to its highlight or takes it out, now or when the marks are shown. */
  function change(found: Painted, range: StaticRange): void {
    if (held) held.push([found, range]);
    else apply([[found, range]]);
  }
  function show(): void {
    const changes = held ?? [];
    held = undefined;
    apply(changes);
  }
  function apply(changes: readonly (readonly [Painted, StaticRange])[]): void {
    const added = new Set<Painted>();
    for (const [found, range] of changes) {
      if (found.ranges.has(range)) {
        found.marks.add(range);
        added.add(found);
      } else found.marks.delete(range);
    }
    for (const found of added) register(found);
  }

  /**
   * Returns the highlight of a mark on letters in one ink. Returns null if the mark could not be distinguished from
   * others, or if there are too many inks.
   */
  function highlightInk(mark: Mark, ink: Ink): Painted | null {
    if (ink.isDrawing && !WASHES[mark]) return null;
    const alike = (one: InkMark): boolean =>
      one.mark === mark && JSON.stringify(one.ink) === JSON.stringify(ink);
    const before = inkMarks.find(alike);
    if (before) return highlight(mark, before.name);
    if (inkMarks.length >= MOST_INKS) return null;
    const name = `wr-${Object.keys(MARKS).length + inkMarks.length + 1}`;
    inkMarks.push({ name, mark, ink });
    if (known.has(doc)) writeRules();
    return highlight(mark, name);
  }
  function add(mark: Mark, ranges: readonly StaticRange[]): void {
    for (const range of ranges) {
      const ink = findInk(range.startContainer as Text);
      const found = ink ? highlightInk(mark, ink) : highlight(mark);
      if (!found) continue;
      found.ranges.add(range);
      change(found, range);
      if (ink) inked.set(range, found);
    }
    veil?.draw();
  }
  function remove(mark: Mark, ranges: readonly StaticRange[]): void {
    for (const range of ranges) {
      const found = inked.get(range) ?? highlights.get(MARKS[mark]);
      if (found?.ranges.delete(range)) change(found, range);
    }
    veil?.draw();
  }

  let here: readonly StaticRange[] = [];
  return {
    add,
    remove,
    pointTo(ranges) {
      show();
      remove('here', here);
      add('here', ranges);
      here = ranges;
    },
    adopt,
    setLook(wanted) {
      look = wanted;
      if (known.has(doc)) writeRules();
      veil?.draw();
    },
    hold() {
      held ??= [];
    },
    show,
    async hide(open) {
      if (isHidden) return;
      show();
      isHidden = true;
      for (const found of highlights.values()) unregister(found);
      dropRules();
      veil = await open(() => ({ look, marks: [...highlights.values()] }));
    },
    restore() {
      if (held) return false;
      let isMissing = false;
      for (const found of highlights.values()) if (register(found)) isMissing = true;
      for (const ref of isHidden ? [] : roots) {
        const root = ref.deref();
        if (!root || root.adoptedStyleSheets.includes(sheet)) continue;
        root.adoptedStyleSheets = [...root.adoptedStyleSheets, sheet];
        isMissing = true;
      }
      return isMissing;
    },
    async clear() {
      show();
      for (const found of highlights.values()) {
        await workInSlices([...found.ranges], (range) => found.marks.delete(range));
        found.ranges.clear();
        unregister(found);
      }
      await nextTurn();
      dropRules();
    },
  };
}

/** The mark of the place looked for has priority over any other mark of the word. */
function createHighlight(mark: Mark): Highlight {
  const marks = new Highlight();
  if (mark === 'here') marks.priority = 1;
  return marks;
}

/** Returns the letter size of the first marked word outside headings, in CSS pixels. */
function sizeOfText(marked: Iterable<Painted>): number {
  for (const { ranges } of marked)
    for (const { startContainer } of ranges) {
      const element = own(startContainer).parentElement;
      if (element && !element.closest(HEADINGS)) return Number.parseFloat(getComputedStyle(element).fontSize);
    }
  return 16;
}
