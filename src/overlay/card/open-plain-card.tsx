import { render } from 'preact';
import { say, spokenDirection, spokenLanguage } from '../../wording/say.ts';
import { cardStyle } from './card-style.ts';
import { CardView } from './card-view.tsx';
import { keepInPlace } from './keep-in-place.ts';
import type { OpenCardFunction } from './open-card.ts';
import { makeElement, openHost } from './open-host.ts';
import { speakWord } from './speak-word.ts';

/**
 * Shows a card drawn into the page itself, for pages that admit no frame of the extension. The page can read this card
 * (with its own search), so the card shows nothing about the group's steps. The card also has no actions, since the
 * page may lay something over it.
 */
export const openPlainCard: OpenCardFunction = (doc, word, content, { mode, focus, back, onClosed }) => {
  const sheet = makeElement(doc, 'div');
  sheet.className = 'sheet';
  sheet.lang = spokenLanguage();
  sheet.dir = spokenDirection();
  const host = openHost(doc, sheet, { mode, style: cardStyle });
  // `all: initial` gives the host the font size that the reader has chosen in the browser.
  sheet.style.setProperty('--rem', getComputedStyle(host.element).fontSize);
  const stop = new AbortController();

  function close({ keepFocus } = { keepFocus: false }): void {
    if (stop.signal.aborted) return;
    stop.abort();
    host.remove(keepFocus ? null : back);
    render(null, sheet);
    onClosed();
  }
  let width = 0;
  const kept = keepInPlace(doc, word, {
    isThere: () => sheet.isConnected,
    onPlace: (at) => {
      sheet.style.left = `${at.left}px`;
      sheet.style.top = `${at.top}px`;
      sheet.style.width = at.width < width ? `${at.width}px` : '';
      sheet.style.maxHeight = `${at.most}px`;
    },
    onRoom: measure,
    onLost: () => close(),
    signal: stop.signal,
  });
  function measure(): void {
    const body = sheet.firstElementChild;
    const scrolled = body?.scrollTop ?? 0;
    sheet.style.width = '';
    sheet.style.maxHeight = '';
    const size = sheet.getBoundingClientRect();
    width = size.width;
    kept.resize(size);
    if (body) body.scrollTop = scrolled;
  }

  sheet.tabIndex = -1;
  sheet.setAttribute('role', 'dialog');
  sheet.setAttribute('aria-labelledby', 'word');
  sheet.setAttribute('aria-describedby', 'standing');
  render(
    <CardView
      word={word.key}
      content={content}
      swaps={[]}
      hindrance={say('card.onlyPanel')}
      onAct={null}
      onSpeak={speakWord}
      onClose={() => close()}
      onResize={measure}
    />,
    sheet,
  );
  if (focus) sheet.focus({ preventScroll: true });
  return { word, back, holds: host.holds, hasFocus: host.hasFocus, hasPointer: () => false, close };
};
