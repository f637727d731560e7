import { render } from 'preact';
import type { WordKey } from '../../analyze/types.ts';
import type { CardLine, FromCard, Hindrance, ToCard } from '../../contract/card-contract.ts';
import type { WordAction, WordExplanation, WordSwap } from '../../contract/page-contract.ts';
import { CardView } from '../../overlay/card/card-view.tsx';
import { speakWord } from '../../overlay/card/speak-word.ts';
import { say, spokenDirection, spokenLanguage } from '../../wording/say.ts';
import type { watchCover } from './watch-cover.ts';

/** The time a card must be visible before it carries out an action, in milliseconds. */
const REST = 500;

interface Shown {
  readonly word: WordKey;
  readonly content: WordExplanation | Error;
}

/**
 * Draws the card of one word as the content script at the other end of the line describes it. Reports the actions done
 * in the card to that script.
 */
export function serveCard(doc: Document, line: CardLine<FromCard, ToCard>, watch: typeof watchCover): void {
  const sheet = doc.createElement('div');
  sheet.className = 'sheet';
  sheet.tabIndex = -1;
  sheet.setAttribute('role', 'dialog');
  sheet.setAttribute('aria-labelledby', 'word');
  sheet.setAttribute('aria-describedby', 'standing');
  doc.documentElement.lang = spokenLanguage();
  doc.documentElement.dir = spokenDirection();
  doc.body.append(sheet);

  let shown: Shown | undefined;
  let swaps: readonly WordSwap[] = [];
  let outside: Hindrance | null = null;
  let fit: { readonly width: number; readonly height: number } | null = null;
  let natural = { width: 0, height: 0 };
  let settle: ((fault: string | null) => void) | undefined;
  /** Whether the last click or key press came from the reader. */
  let isTrusted = false;
  const cover = watch(sheet, draw);

  /**
   * Whether the card has been open for `REST`. Only then does the card report that something covers it, since the
   * browser has not checked yet when the card opens.
   */
  let isLate = false;
  setTimeout(() => {
    isLate = true;
    draw();
  }, REST);
  function hindrance(): string | null {
    if (outside === 'frame') return say('card.onlyPanel');
    return outside === 'covered' || (isLate && cover.isSeen() === false) ? say('card.covered') : null;
  }

  function measure(): void {
    const body = sheet.firstElementChild;
    const scrolled = body?.scrollTop ?? 0;
    Object.assign(sheet.style, { width: '', height: '', maxHeight: '' });
    const width = Math.ceil(sheet.getBoundingClientRect().width);
    sheet.style.width = `${width}px`;
    const height = Math.ceil(sheet.getBoundingClientRect().height);
    if (width !== natural.width || height !== natural.height) {
      natural = { width, height };
      line.tell({ tell: 'size', width, height });
    }
    fill();
    if (body) body.scrollTop = scrolled;
  }
  function fill(): void {
    if (!fit) return;
    Object.assign(sheet.style, { width: `${fit.width}px`, height: '', maxHeight: `${fit.height}px` });
    if (fit.width < natural.width)
      line.tell({ tell: 'height', height: Math.ceil(sheet.getBoundingClientRect().height) });
  }

  async function act(action: WordAction): Promise<void> {
    const isSeen = cover.isSeen();
    if (!isTrusted) return;
    if (isSeen === false) throw new Error(say('card.covered'));
    if (isSeen && performance.now() - cover.seenSince() < REST) throw new Error(say('card.moved'));
    const fault = await new Promise<string | null>((resolve) => {
      settle = resolve;
      line.tell({ tell: 'act', action });
    });
    if (fault !== null) throw new Error(fault);
  }

  function draw(): void {
    if (!shown) return;
    render(
      <CardView
        {...shown}
        swaps={swaps}
        hindrance={hindrance()}
        onAct={act}
        onSpeak={speakWord}
        onClose={() => line.tell({ tell: 'close' })}
        onResize={measure}
      />,
      sheet,
    );
  }

  line.hear((told) => {
    if (told.tell === 'show') {
      const hadFocus = told.focus || sheet.contains(doc.activeElement);
      doc.documentElement.style.setProperty('--room', `${told.room}px`);
      shown = { word: told.word, content: told.content ?? new Error(told.fault ?? '') };
      draw();
      // The pressed button may no longer exist.
      if (hadFocus && !sheet.contains(doc.activeElement)) sheet.focus();
    } else if (told.tell === 'swaps') {
      swaps = told.swaps;
      draw();
    } else if (told.tell === 'room') {
      doc.documentElement.style.setProperty('--room', `${told.room}px`);
      natural = { width: 0, height: 0 };
      measure();
    } else if (told.tell === 'fit') {
      fit = told;
      fill();
    } else if (told.tell === 'hindrance') {
      outside = told.hindrance;
      draw();
    } else settle?.(told.fault);
  });

  const note = (event: Event): void => {
    isTrusted = event.isTrusted;
  };
  doc.addEventListener('click', note, { capture: true });
  doc.addEventListener('pointerdown', () => line.tell({ tell: 'keep' }), { capture: true });
  doc.addEventListener('pointermove', () => line.tell({ tell: 'point' }), { passive: true });
  doc.documentElement.addEventListener('pointerenter', () => line.tell({ tell: 'over', over: true }));
  doc.documentElement.addEventListener('pointerleave', () => line.tell({ tell: 'over', over: false }));
  doc.addEventListener('keydown', (event) => {
    if (event.key !== 'Escape' || !event.isTrusted) return;
    event.preventDefault();
    line.tell({ tell: 'close' });
  });
}
