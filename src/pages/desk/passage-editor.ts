import { defaultKeymap, history, historyKeymap, invertedEffects } from '@codemirror/commands';
import { highlightSelectionMatches, search, searchKeymap } from '@codemirror/search';
import {
  Compartment,
  EditorState,
  type Extension,
  RangeSetBuilder,
  StateEffect,
  type Transaction,
} from '@codemirror/state';
import {
  Decoration,
  type DecorationSet,
  drawSelection,
  EditorView,
  keymap,
  ViewPlugin,
  type ViewUpdate,
} from '@codemirror/view';
import { remember, splitKey } from '../../analyze/index.ts';
import { readPasted } from '../../passage/files/read-pasted.ts';
import { findLongSentences } from '../../passage/find-sentences.ts';
import { readLine } from '../../passage/passage-lines.ts';
import type { ShadedLine, ShadedWord } from '../../passage/shade-line.ts';
import { editorPhrases } from './editor-phrases.ts';

/** The nonce with which the policy of the extension's pages (wxt.config.ts) allows a style sheet of the library. */
const NONCE = 'wordreach';

/** A word in the passage, with its place in the whole text. */
export interface PassageWord {
  readonly from: number;
  readonly to: number;
  readonly text: string;
  readonly key: string;
  /** The line that contains the word, and the place of the word in that line. */
  readonly line: string;
  readonly start: number;
  readonly end: number;
}

export interface PassageEditorOptions {
  readonly parent: HTMLElement;
  readonly text: string;
  readonly label: string;
  readonly onChange: (text: string) => void;
  /**
   * Called when the text has to be counted and shown again. The call comes at once after any change except typing.
   * After typing, the call comes when typing has paused.
   */
  readonly onSettled: () => void;
  /** Called with the word at the cursor; null when the cursor is not in a word. */
  readonly onWord: (word: PassageWord | null) => void;
  readonly signal: AbortSignal;
}

/** A part of the text to be replaced. Its place refers to the text before any of the edits. */
export interface TextEdit {
  readonly from: number;
  readonly to: number;
  readonly text: string;
}

/** A change that belongs to an edit of the text, and is undone and redone with that edit. */
export interface Beside {
  readonly make: () => void;
  readonly undo: () => void;
}

/** The current shading of the text. */
export interface Shading {
  readonly shade: (line: string) => ShadedLine;
  /** Sentences with more words than this number are marked; null for no marks. */
  readonly longest: number | null;
  /** Words to pre-teach, in lower case. These words have their own mark. */
  readonly preTeach: readonly string[];
}

/** The field in which a passage is adapted. Only this file uses the editing library. */
export interface PassageEditor {
  setShading(shading: Shading): void;
  /** Makes several edits as a single undo step, together with the change `beside` that belongs to them. */
  edit(edits: readonly TextEdit[], beside?: Beside): void;
  /** Replaces a word everywhere, keeps capitals, and returns the number of replacements. */
  replaceEverywhere(word: string, text: string): number;
  /** Goes to the first word that is not yet decodable. If there is none, moves the focus into the text. */
  goToHard(): void;
  /** Goes to the n-th occurrence of a word. */
  goTo(key: string, n: number): void;
}

/** The maximum number of lines whose decorations are kept. */
const MOST = 2000;

/** Typing counts as paused after this many milliseconds without a key. */
const REST = 200;

const beside = StateEffect.define<Beside>();

/** Opens the field in `parent`. Aborting `signal` removes the field. */
export function createPassageEditor(options: PassageEditorOptions): PassageEditor {
  const { parent, label, onChange, onSettled, onWord, signal } = options;
  const shading = new Compartment();
  let shade: Shading['shade'] | null = null;
  let told: PassageWord | null = null;
  let typed: ReturnType<typeof setTimeout> | undefined;

  const view = new EditorView({
    parent,
    state: EditorState.create({
      doc: options.text,
      extensions: [
        history(),
        invertedEffects.of(({ effects }) =>
          effects.flatMap((effect) =>
            effect.is(beside) ? [beside.of({ make: effect.value.undo, undo: effect.value.make })] : [],
          ),
        ),
        drawSelection(),
        search({ top: true }),
        highlightSelectionMatches({ minSelectionLength: 3 }),
        keymap.of([
          // Tab moves between the words. For two seconds after Escape, Tab leaves the field instead.
          {
            key: 'Escape',
            run: (view) => {
              view.setTabFocusMode(2000);
              return false;
            },
          },
          { key: 'Tab', run: () => step(1), shift: () => step(-1) },
          ...searchKeymap,
          ...historyKeymap,
          ...defaultKeymap,
        ]),
        EditorView.cspNonce.of(NONCE),
        EditorState.phrases.of(editorPhrases()),
        EditorView.lineWrapping,
        EditorView.contentAttributes.of({
          'aria-label': label,
          spellcheck: 'true',
          autocorrect: 'on',
          lang: 'en',
        }),
        EditorView.domEventHandlers({
          // Leaving the text or giving a command shows the teacher the current state at once.
          blur: () => settle(),
          keydown: ({ ctrlKey, metaKey }) => {
            if (ctrlKey || metaKey) settle();
          },
          paste(event, editor) {
            const html = event.clipboardData?.getData('text/html');
            const text = html ? readPasted(html) : '';
            if (text === '') return false;
            event.preventDefault();
            editor.dispatch(editor.state.replaceSelection(text), { scrollIntoView: true });
            return true;
          },
        }),
        EditorView.updateListener.of((update) => {
          if (update.docChanged) {
            onChange(update.state.doc.toString());
            if (typed === undefined) parent.classList.add('is-typing');
            clearTimeout(typed);
            typed = setTimeout(settle, REST);
            if (!update.transactions.some(isTyped)) settle();
          } else if (update.selectionSet) tellWord();
          for (const { effects } of update.transactions)
            for (const effect of effects) if (effect.is(beside)) effect.value.make();
        }),
        lineKinds,
        shading.of([]),
      ],
    }),
  });
  const end = (): void => {
    settle();
    view.destroy();
  };
  signal.addEventListener('abort', end, { once: true });

  function settle(): void {
    if (typed === undefined) return;
    clearTimeout(typed);
    typed = undefined;
    parent.classList.remove('is-typing');
    onSettled();
    tellWord();
  }
  function tellWord(): void {
    const word = shade && wordAt(view.state, view.state.selection.main.head, shade);
    if (word?.from === told?.from && word?.to === told?.to && word?.text === told?.text) return;
    told = word;
    onWord(word);
  }
  function* words(): Generator<PassageWord & { readonly standing: ShadedWord['standing'] }> {
    if (!shade) return;
    for (let n = 1; n <= view.state.doc.lines; n++) {
      const line = view.state.doc.line(n);
      for (const word of shade(line.text).words)
        yield { ...placed(word, line.text, line.from), standing: word.standing };
    }
  }
  function select({ from, to }: { from: number; to: number }): void {
    view.dispatch({ selection: { anchor: to, head: from }, scrollIntoView: true });
    view.focus();
  }
  /** Goes to the next (1) or previous (-1) word that is not yet decodable. */
  function step(direction: 1 | -1): true {
    const beyond = [...words()].filter(({ standing }) => standing === 'beyond');
    const { from, to } = view.state.selection.main;
    const next =
      direction === 1
        ? (beyond.find((word) => word.from >= to && word.from > from) ?? beyond[0])
        : (beyond.findLast((word) => word.to <= from) ?? beyond.at(-1));
    if (next) select(next);
    return true;
  }

  return {
    setShading(given) {
      ({ shade } = given);
      view.dispatch({ effects: shading.reconfigure(shadeText(given)) });
      told = null;
      tellWord();
    },
    edit(edits, also) {
      view.dispatch({
        changes: edits.map(({ from, to, text }) => ({ from, to, insert: text })),
        ...(also && { effects: beside.of(also) }),
      });
      view.focus();
    },
    replaceEverywhere(word, text) {
      const places = [...words()].filter((place) => place.text.toLowerCase() === word.toLowerCase());
      view.dispatch({
        changes: places.map((place) => ({
          from: place.from,
          to: place.to,
          insert: withCapital(text, place.text),
        })),
      });
      return places.length;
    },
    goToHard() {
      const first = [...words()].find(({ standing }) => standing === 'beyond');
      if (first) select(first);
      else view.focus();
    },
    goTo(key, n) {
      const wanted = splitKey(key).word.toLowerCase();
      const places = [...words()].filter((place) => place.text.toLowerCase().replace(/[’]/g, "'") === wanted);
      const place = places[n % places.length];
      if (place) select(place);
    },
  };
}

function isTyped(change: Transaction): boolean {
  return change.isUserEvent('input.type') || change.isUserEvent('delete');
}

function withCapital(text: string, like: string): string {
  return /^\p{Lu}/u.test(like) ? text.charAt(0).toUpperCase() + text.slice(1) : text;
}

function placed({ start, end, key }: ShadedWord, line: string, from: number): PassageWord {
  return { from: from + start, to: from + end, text: line.slice(start, end), key, line, start, end };
}

function wordAt(state: EditorState, at: number, shade: Shading['shade']): PassageWord | null {
  const line = state.doc.lineAt(at);
  const found = shade(line.text).words.find(
    ({ start, end }) => line.from + start <= at && at <= line.from + end,
  );
  return found ? placed(found, line.text, line.from) : null;
}

/** Marks the text in view. Updates the marks when the text or the view changes. */
function shadeText({ shade, longest, preTeach }: Shading): Extension {
  const known = new Set(preTeach);
  const marks = new Map<string, Decoration>();
  const mark = (name: string): Decoration => {
    const made = marks.get(name) ?? Decoration.mark({ class: `desk-${name}` });
    marks.set(name, made);
    return made;
  };
  return inView((text) => {
    const found = shade(text)
      .words.filter(({ standing }) => /^(beyond|fresh|unsure)$/.test(standing))
      .map(({ start, end, key, standing }) => {
        const isPreTaught = known.has(splitKey(key).word.toLowerCase());
        return { start, end, name: isPreTaught ? 'pre-teach' : (standing as string) };
      });
    const long = longest === null ? [] : findLongSentences(text, longest);
    const all = [...found, ...long.map(({ start, end }) => ({ start, end, name: 'long' }))];
    return all
      .sort((a, b) => a.start - b.start || b.end - a.end)
      .map(({ start, end, name }) => ({ start, end, mark: mark(name) }));
  });
}

/** Styles headings and list entries as such. */
const lineKinds: Extension = inView((text) => {
  const { kind, level, sign } = readLine(text);
  if (sign === 0) return [];
  const line = Decoration.line({ class: kind === 'heading' ? `desk-h${level}` : 'desk-item' });
  return [
    { start: 0, end: 0, mark: line },
    { start: 0, end: sign, mark: Decoration.mark({ class: 'desk-sign' }) },
  ];
});

/** A decoration of a part of a line. */
interface LineMark {
  readonly start: number;
  readonly end: number;
  readonly mark: Decoration;
}

/** Decorates the lines in view. A key costs only its own line, since the decorations of the other lines are kept. */
function inView(decorate: (line: string) => readonly LineMark[]): Extension {
  const marksOf = remember(decorate, MOST);
  const build = (view: EditorView): DecorationSet => {
    const builder = new RangeSetBuilder<Decoration>();
    for (const { from, to } of view.visibleRanges) {
      for (let at = from; at <= to; ) {
        const line = view.state.doc.lineAt(at);
        for (const { start, end, mark } of marksOf(line.text))
          builder.add(line.from + start, line.from + end, mark);
        at = line.to + 1;
      }
    }
    return builder.finish();
  };
  return ViewPlugin.fromClass(
    class {
      decorations: DecorationSet;
      constructor(view: EditorView) {
        this.decorations = build(view);
      }
      update({ docChanged, viewportChanged, view }: ViewUpdate): void {
        if (docChanged || viewportChanged) this.decorations = build(view);
      }
    },
    { decorations: (plugin) => plugin.decorations },
  );
}
