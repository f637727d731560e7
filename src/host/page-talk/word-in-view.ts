import { splitKey } from '../../analyze/index.ts';
import type { WordKey } from '../../analyze/types.ts';
import type { WordInSentence } from '../../contract/page-contract.ts';
import { hearMessages } from './hear-messages.ts';
import { isQuestion } from './messages.ts';

/** The number of remembered words that a page asked about before it opened the card of one of them. */
const REMEMBERED = 8;

/** The word of a page whose card is open, and the sentence it is in. */
export interface WordInView {
  readonly word: WordKey;
  readonly place: WordInSentence;
}

/**
 * Calls back with the word whose card a page opens, until aborted. The page asks the background to explain a word, and
 * once the card is open, it asks for replacement words. This function listens to both questions.
 */
export function watchWordInView(tab: number, onWord: (word: WordInView) => void, signal: AbortSignal): void {
  let asked: readonly WordKey[] = [];
  hearMessages((message, sender) => {
    if (!isQuestion(message, 'background') || sender.tab?.id !== tab) return undefined;
    if (message.ask === 'explain') asked = [message.given as WordKey, ...asked].slice(0, REMEMBERED);
    if (message.ask === 'swaps') {
      const place = message.given as WordInSentence;
      const written = place.sentence.slice(place.start, place.end).toLowerCase();
      const word = asked.find((key) => splitKey(key).word.toLowerCase() === written);
      if (word !== undefined) onWord({ word, place });
    }
    return undefined;
  }, signal);
}
