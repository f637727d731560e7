import { useEffect, useState } from 'preact/hooks';
import type { WordKey } from '../../analyze/types.ts';
import { askBackground, askPage } from '../../host/page-talk/client.ts';

/** Words that may stand for a word at its first place in a page; null until they are found. */
export function useSwaps(tab: number, word: WordKey | null, version: unknown) {
  const [swaps, setSwaps] = useState<readonly { text: string; reads: boolean }[] | null>(null);
  useEffect(() => {
    setSwaps(null);
    if (word === null) return;
    let current = true;
    askPage(tab, 'sentence', { key: word, n: 0 })
      .then((sentence) => (sentence ? askBackground('swaps', sentence) : []))
      .then(
        (found) => current && setSwaps(found),
        () => current && setSwaps([]),
      );
    return () => {
      current = false;
    };
  }, [tab, word, version]);
  return swaps;
}
