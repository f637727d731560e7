import { useMemo } from 'preact/hooks';
import { createClimber, type Fit, rankTexts, stepsOfWords, type WordSteps } from '../../analyze/index.ts';
import type { Group } from '../../analyze/types.ts';
import { withinSequence } from '../../host/store/move-group.ts';
import { findSequence, type Sequences } from '../../host/store/sequences-store.ts';
import type { IndexedText } from './shelf-index.ts';
import type { ReadyShelf } from './use-shelf.ts';

/**
 * Returns the fit of each text for a group, in the order of the texts. A text with a reach of `mark` percent counts as
 * readable.
 */
export type Ranker = (texts: readonly IndexedText[], group: Group, mark: number) => readonly Fit[];

/** The number of groups for which the steps of all words are kept. */
const KEPT = 40;

/**
 * Creates a ranker over a shelf. The steps of all words are found once for a group, until something other than the
 * group's step changes. After a move to another step, the steps of the words that were found earlier are used again.
 */
export function createRanker({ index, weigher }: ReadyShelf, sequences: Sequences): Ranker {
  const known = new Map<string, WordSteps>();
  return (texts, group, mark) => {
    const sequence = findSequence(sequences, group.sequence);
    const within = withinSequence(group, sequence);
    const key = JSON.stringify({ ...group, step: 0, history: [], name: '' });
    const words = known.get(key) ?? stepsOfWords(index.numbers, createClimber(weigher, within, sequence));
    if (known.size >= KEPT && !known.has(key)) known.clear();
    known.set(key, words);
    words.follow();
    return rankTexts(
      texts.map((text) => text.words),
      words,
      { step: within.step, mark },
    );
  };
}

/** Returns the ranker of a shelf. It is kept until the shelf or its sequences change. */
export function useRanker(shelf: ReadyShelf, sequences: Sequences): Ranker {
  return useMemo(() => createRanker(shelf, sequences), [shelf.index, shelf.weigher, sequences]);
}
