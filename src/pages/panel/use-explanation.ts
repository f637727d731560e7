import { useEffect, useState } from 'preact/hooks';
import type { WordKey } from '../../analyze/types.ts';
import type { WordExplanation } from '../../contract/page-contract.ts';
import { askBackground } from '../../host/page-talk/client.ts';

/** Everything known of one word, asked for anew when `version` changes (the group did); null until it is there. */
export function useExplanation(word: WordKey | null, version: unknown): WordExplanation | null {
  const [found, setFound] = useState<WordExplanation | null>(null);
  useEffect(() => {
    if (word === null) return setFound(null);
    let current = true;
    askBackground('explain', word).then(
      (answer) => current && setFound(answer),
      () => current && setFound(null),
    );
    return () => {
      current = false;
    };
  }, [word, version]);
  return found?.analysis.word.toLowerCase() === word?.toLowerCase() ? found : null;
}
