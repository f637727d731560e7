import type { WordSwap } from '../../contract/page-contract.ts';
import { say } from '../../wording/say.ts';

interface SwapsProps {
  readonly swaps: readonly WordSwap[];
  /** The word that the swaps replace. */
  readonly word: string;
  readonly tab: number;
  /** Hides the introductory words on screen. A screen reader still says them. */
  readonly isShort?: boolean;
}

/** Shows replacement words. Each word links to the desk, which puts it into the text. */
export function Swaps({ swaps, word, tab, isShort = false }: SwapsProps) {
  if (swaps.length === 0) return isShort ? null : <span class="quiet">{say('panel.noSwap')}</span>;
  return (
    <>
      {isShort && <span aria-hidden="true">→ </span>}
      <span class={isShort ? 'unseen' : 'quiet'}>{say('panel.sayInstead')}</span>{' '}
      {swaps.map(({ text, reads }) => (
        <a
          key={text}
          lang="en"
          class={reads ? 'swap' : 'swap swap-beyond'}
          href={`/desk.html#take/${tab}/${encodeURIComponent(word)}/${encodeURIComponent(text)}`}
          target="_blank"
          rel="noopener"
        >
          {text}
        </a>
      ))}
    </>
  );
}
