import type { ComponentChildren } from 'preact';
import { splitKey } from '../../analyze/index.ts';
import type { WordKey } from '../../analyze/types.ts';
import type { WordSwap } from '../../contract/page-contract.ts';
import { say } from '../../wording/say.ts';
import './word-card.css';
import { Swaps } from './swaps.tsx';

interface WordLineProps {
  readonly word: WordKey;
  /** Null while they are looked for. */
  readonly swaps: readonly WordSwap[] | null;
  readonly tab: number;
  readonly isOpen: boolean;
  readonly onToggle: () => void;
  /** The word taken apart, where it is open. */
  readonly children: ComponentChildren;
}

/** The word whose card the page shows, with its replacement words; pressed, it is taken apart here. */
export function WordLine({ word, swaps, tab, isOpen, onToggle, children }: WordLineProps) {
  const shown = splitKey(word).word;
  return (
    <div class="word-line">
      {isOpen && <div class="word-line-card">{children}</div>}
      <p class="swaps">
        <span class="quiet">{say('panel.wordInView')}</span>
        <button type="button" class="plain" lang="en" aria-expanded={isOpen} onClick={onToggle}>
          {shown}
        </button>
        {swaps && !isOpen && <Swaps swaps={swaps} word={shown} tab={tab} isShort />}
      </p>
    </div>
  );
}
