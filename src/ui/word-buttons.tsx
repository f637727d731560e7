import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import type { WordKey } from '../analyze/types.ts';
import { say } from '../wording/say.ts';

const SHOWN = 8;

/**
 * The action of a pressed word, and the word that is open. Every list of words in the panel has the same action and
 * open word.
 */
export interface WordLinks {
  /** The word that is taken apart at the moment, and the list it is in. */
  readonly opened: { readonly list: string; readonly word: WordKey } | null;
  readonly card: ComponentChildren;
  readonly isUnsure: (word: WordKey) => boolean;
  readonly open: (list: string, word: WordKey) => void;
}

interface WordButtonsProps {
  readonly list: string;
  readonly words: readonly WordKey[];
  readonly links: WordLinks;
}

/**
 * A list of words as buttons. Pressing a word leads to its place in the page, and pressing it again leads to the next
 * place. The word is taken apart beneath the list.
 */
export function WordButtons({ list, words, links }: WordButtonsProps) {
  const [all, setAll] = useState(false);
  const shown = all ? words : words.slice(0, SHOWN);
  const opened = links.opened?.list === list ? links.opened.word : null;
  return (
    <>
      <p class="words" lang="en">
        {shown.map((word) => (
          <button
            key={word}
            type="button"
            class={`word${links.isUnsure(word) ? ' word-unsure' : ''}`}
            aria-current={word === opened}
            onClick={() => links.open(list, word)}
          >
            {word}
          </button>
        ))}
        {words.length > SHOWN && (
          <button type="button" class="plain" aria-expanded={all} onClick={() => setAll(!all)}>
            {all ? say('ui.fewerWords') : say('ui.moreOfThem', { count: words.length - SHOWN })}
          </button>
        )}
      </p>
      {opened !== null && words.includes(opened) && links.card}
    </>
  );
}
