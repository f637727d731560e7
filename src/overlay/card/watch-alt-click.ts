import type { CardWord } from './card-sources.ts';

interface AltClickOptions {
  readonly wordAt: (x: number, y: number) => CardWord | null;
  /** Whether an event fell on an open card. */
  readonly isHeld: (event: Event) => boolean;
  readonly onPick: (word: CardWord) => void;
  readonly signal: AbortSignal;
}

const FOLLOWING = ['mousedown', 'pointerup', 'mouseup', 'click', 'dblclick', 'contextmenu'] as const;

/** Reports Alt+click on a word and hides that click from the page. The page still gets an Alt+click beside a word. */
export function watchAltClick(view: Window, { wordAt, isHeld, onPick, signal }: AltClickOptions): void {
  let picked: CardWord | null = null;
  const take = (event: Event): void => {
    event.preventDefault();
    event.stopImmediatePropagation();
  };
  const options = { capture: true, signal };
  view.addEventListener(
    'pointerdown',
    (event) => {
      const { altKey, ctrlKey, metaKey, shiftKey, button, isTrusted, clientX, clientY } = event;
      const asked = isTrusted && altKey && !ctrlKey && !metaKey && !shiftKey && button === 0;
      picked = asked && !isHeld(event) ? wordAt(clientX, clientY) : null;
      if (picked) take(event);
    },
    options,
  );
  for (const kind of FOLLOWING) {
    view.addEventListener(
      kind,
      (event) => {
        // A click with a count of 0 comes from the keyboard and goes to the focused element.
        const byKeyboard = kind === 'click' && event.detail === 0;
        if (!picked || !event.isTrusted || byKeyboard) return;
        take(event);
        if (kind === 'click') onPick(picked);
      },
      options,
    );
  }
}
