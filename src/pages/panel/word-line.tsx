import { splitKey } from '../../analyze/index.ts';
import type { WordKey } from '../../analyze/types.ts';
import type { WordSwap } from '../../contract/page-contract.ts';
import { say } from '../../wording/say.ts';
import './word-card.css';
import { Swaps } from './swaps.tsx';

interface WordLineProps {
  readonly word: WordKey;
  /** Null while the search for swaps runs. */
  readonly swaps: readonly WordSwap[] | null;
  readonly tab: number;
  readonly isOpen: boolean;
  readonly onToggle: () => void;
}

/**
 * Shows the word whose card is open on the page, with its replacement words. A click on the word opens its analysis in
 * the panel.
 */
export function WordLine({ word, swaps, tab, isOpen, onToggle }: WordLineProps) {
  const shown = splitKey(word).word;
  return (
    <p class="swaps word-line">
      <span class="quiet">{say('panel.wordInView')}</span>
      <button type="button" class="plain" lang="en" aria-expanded={isOpen} onClick={onToggle}>
        {shown}
      </button>
      {swaps && !isOpen && <Swaps swaps={swaps} word={shown} tab={tab} isShort />}
    </p>
  );
}
