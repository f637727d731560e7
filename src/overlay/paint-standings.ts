import type { Look, Shown } from '../contract/page-contract.ts';
import type { Marked, Veil } from './draw-veil.ts';
import { createInkFinder } from './find-ink.ts';
import { type Ink, type InkMark, MARKS, type Mark, markRules, WASHES } from './mark-rules.ts';
import { nextTurn, workInSlices } from './work-in-slices.ts';

/** Letters in more inks than this go without marks: each ink has rules of its own. */
const MOST_INKS = 12;

/** Whether words of a standing have a mark; the others look as the page has them. */
export function isMarked(standing: Shown): standing is Shown & Mark {
  return standing in MARKS;
}

/** Marks ranges of one document without touching its nodes. */
export interface Painter {
  add(mark: Mark, ranges: readonly StaticRange[]): void;
  remove(mark: Mark, ranges: readonly StaticRange[]): void;
  /** Marks one word as the place looked for; none takes the mark away. */
  pointTo(ranges: readonly StaticRange[]): void;
  /** A shadow root does not get the rules of its document in every browser. */
  adopt(root: ShadowRoot): void;
  /** Changes how all marks look. */
  setLook(look: Look): void;
  /** Takes the marks out of what the page's scripts can see, for good, and has them drawn by what `open` gives. Rejects where that is not to be had. */
  hide(open: (marked: () => Marked) => Promise<Veil>): Promise<void>;
  /** Marks added and removed from now on are not shown until `show`: it is cheaper at once. */
  hold(): void;
  show(): void;
  /** Puts back what the page took away of marks and rules; false when nothing was missing. */
  restore(): boolean;
  /** Takes every mark and rule away, in slices. */
  clear(): Promise<void>;
}

/** All ranges of one highlight. They are kept beside it: Firefox lets no content script walk through a highlight. */
interface Painted {
  readonly mark: Mark;
  marks: Highlight;
  readonly ranges: Set<StaticRange>;
}

/** A painter over the CSS Custom Highlight API (CSS Custom Highlight API Module Level 1). */
export function createPainter(doc: Document): Painter {
  const findInk = createInkFinder();
  const sheet = new CSSStyleSheet();
  let look: Look = 'wash';
  sheet.replaceSync(markRules(look));
  const inkMarks: InkMark[] = [];
  /** Where a range is that is in the highlight of an ink. */
  const inked = new WeakMap<StaticRange, Painted>();
  // Held weakly: a shadow root holds its host, and that all of a part the page threw away.
  const roots: WeakRef<Document | ShadowRoot>[] = [];
  const known = new WeakSet<Document | ShadowRoot>();
  const highlights = new Map<string, Painted>();
  let isHidden = false;
  let isHeld = false;
  let veil: Veil | undefined;

  function adopt(root: Document | ShadowRoot): void {
    if (isHidden || known.has(root)) return;
    known.add(root);
    root.adoptedStyleSheets = [...root.adoptedStyleSheets, sheet];
    roots.push(new WeakRef(root));
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
      found = { mark, marks: createHighlight(mark), ranges: new Set() };
      highlights.set(name, found);
    }
    register(name, found.marks);
    return found;
  }
  function unregister(name: string, marks: Highlight): void {
    if (CSS.highlights.get(name) === marks) CSS.highlights.delete(name);
  }
  function register(name: string, marks: Highlight): boolean {
    if (isHidden || isHeld || CSS.highlights.get(name) === marks) return false;
    // Not before there is a mark: the browser works all styles of the page out anew, and the first reading asks for them.
    adopt(doc);
    CSS.highlights.set(name, marks);
    return true;
  }
  function show(): void {
    if (!isHeld) return;
    isHeld = false;
    for (const [name, { marks }] of highlights) register(name, marks);
  }

  /** The highlight of a mark on letters in one ink; none where it would not be told from the others, or there are too many. */
  function highlightInk(mark: Mark, ink: Ink): Painted | null {
    if (ink.isDrawing && !WASHES[mark]) return null;
    const alike = (one: InkMark): boolean =>
      one.mark === mark && JSON.stringify(one.ink) === JSON.stringify(ink);
    const known = inkMarks.find(alike);
    if (known) return highlight(mark, known.name);
    if (inkMarks.length >= MOST_INKS) return null;
    const name = `wr-${Object.keys(MARKS).length + inkMarks.length + 1}`;
    inkMarks.push({ name, mark, ink });
    sheet.replaceSync(markRules(look, inkMarks));
    return highlight(mark, name);
  }
  function add(mark: Mark, ranges: readonly StaticRange[]): void {
    for (const range of ranges) {
      const ink = findInk(range.startContainer as Text);
      const found = ink ? highlightInk(mark, ink) : highlight(mark);
      if (!found) continue;
      found.marks.add(range);
      found.ranges.add(range);
      if (ink) inked.set(range, found);
    }
    veil?.draw();
  }
  function remove(mark: Mark, ranges: readonly StaticRange[]): void {
    for (const range of ranges) {
      const found = inked.get(range) ?? highlights.get(MARKS[mark]);
      if (found) unmark(found, range);
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
      sheet.replaceSync(markRules(look, inkMarks));
      veil?.draw();
    },
    hold() {
      if (isHeld) return;
      isHeld = true;
      for (const found of highlights.values()) {
        found.marks = createHighlight(found.mark);
        for (const range of found.ranges) found.marks.add(range);
      }
    },
    show,
    async hide(open) {
      if (isHidden) return;
      show();
      isHidden = true;
      for (const [name, { marks }] of highlights) unregister(name, marks);
      dropRules();
      veil = await open(() => ({ look, marks: [...highlights.values()] }));
    },
    restore() {
      let isMissing = false;
      for (const [name, { marks }] of highlights) if (register(name, marks)) isMissing = true;
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
      for (const [name, found] of highlights) {
        await workInSlices([...found.ranges], (range) => unmark(found, range));
        unregister(name, found.marks);
      }
      await nextTurn();
      dropRules();
    },
  };
}

/** The place looked for is seen through whatever mark its word has. */
function createHighlight(mark: Mark): Highlight {
  const marks = new Highlight();
  if (mark === 'here') marks.priority = 1;
  return marks;
}

function unmark({ marks, ranges }: Painted, range: StaticRange): void {
  marks.delete(range);
  ranges.delete(range);
}
