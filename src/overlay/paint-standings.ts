import type { Standing } from '../analyze/types.ts';
import { type Look, MARKS, markRules } from './mark-rules.ts';
import { nextTurn, workInSlices } from './work-in-slices.ts';

const NAMES: Partial<Record<Standing, string>> = {
  beyond: MARKS.beyond,
  fresh: MARKS.fresh,
  unsure: MARKS.unsure,
};

/** Whether words of a standing have a mark; the others look as the page has them. */
export function isMarked(standing: Standing): boolean {
  return NAMES[standing] !== undefined;
}

/** Marks ranges of one document without touching its nodes. */
export interface Painter {
  add(standing: Standing, ranges: readonly StaticRange[]): void;
  remove(standing: Standing, ranges: readonly StaticRange[]): void;
  /** Marks one word as the place looked for; none takes the mark away. */
  pointTo(ranges: readonly StaticRange[]): void;
  /** A shadow root does not get the rules of its document in every browser. */
  adopt(root: ShadowRoot): void;
  /** Changes how all marks look. */
  setLook(look: Look): void;
  /** Puts back what the page took away of marks and rules; false when nothing was missing. */
  restore(): boolean;
  /** Takes every mark and rule away, in slices. */
  clear(): Promise<void>;
}

/** A painter over the CSS Custom Highlight API (CSS Custom Highlight API Module Level 1). */
export function createPainter(doc: Document): Painter {
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(markRules('wash'));
  // Held weakly: a shadow root holds its host, and that all of a part the page threw away.
  const roots: WeakRef<Document | ShadowRoot>[] = [];
  const known = new WeakSet<Document | ShadowRoot>();
  // The ranges are kept beside each highlight: Firefox lets no content script walk through a highlight.
  const highlights = new Map<string, { marks: Highlight; ranges: Set<StaticRange> }>();

  function adopt(root: Document | ShadowRoot): void {
    if (known.has(root)) return;
    known.add(root);
    root.adoptedStyleSheets = [...root.adoptedStyleSheets, sheet];
    roots.push(new WeakRef(root));
  }
  function highlight(name: string): { marks: Highlight; ranges: Set<StaticRange> } {
    let found = highlights.get(name);
    if (!found) {
      found = { marks: new Highlight(), ranges: new Set() };
      highlights.set(name, found);
      // Not before there is a mark: the browser works all styles of the page out anew, and the first reading asks for them.
      adopt(doc);
    }
    if (CSS.highlights.get(name) !== found.marks) CSS.highlights.set(name, found.marks);
    return found;
  }

  return {
    add(standing, ranges) {
      const name = NAMES[standing];
      if (name) for (const range of ranges) mark(highlight(name), range);
    },
    remove(standing, ranges) {
      const found = highlights.get(NAMES[standing] ?? '');
      if (found) for (const range of ranges) unmark(found, range);
    },
    pointTo(ranges) {
      const here = highlight(MARKS.here);
      here.marks.priority = 1;
      for (const range of here.ranges) unmark(here, range);
      for (const range of ranges) mark(here, range);
    },
    adopt,
    setLook: (look) => sheet.replaceSync(markRules(look)),
    restore() {
      let isMissing = false;
      for (const [name, { marks }] of highlights) {
        if (CSS.highlights.get(name) === marks) continue;
        CSS.highlights.set(name, marks);
        isMissing = true;
      }
      for (const ref of roots) {
        const root = ref.deref();
        if (!root || root.adoptedStyleSheets.includes(sheet)) continue;
        root.adoptedStyleSheets = [...root.adoptedStyleSheets, sheet];
        isMissing = true;
      }
      return isMissing;
    },
    async clear() {
      const unaborted = new AbortController().signal;
      for (const [name, found] of highlights) {
        await workInSlices([...found.ranges], (range) => unmark(found, range), unaborted);
        if (CSS.highlights.get(name) === found.marks) CSS.highlights.delete(name);
      }
      await nextTurn();
      for (const ref of roots) {
        const root = ref.deref();
        if (root) root.adoptedStyleSheets = root.adoptedStyleSheets.filter((one) => one !== sheet);
      }
    },
  };
}

function mark({ marks, ranges }: { marks: Highlight; ranges: Set<StaticRange> }, range: StaticRange): void {
  marks.add(range);
  ranges.add(range);
}

function unmark({ marks, ranges }: { marks: Highlight; ranges: Set<StaticRange> }, range: StaticRange): void {
  marks.delete(range);
  ranges.delete(range);
}
