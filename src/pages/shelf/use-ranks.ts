import { useMemo } from 'preact/hooks';
import { createClimber, type Fit, rankTexts, stepsOfWords, type WordSteps } from '../../analyze/index.ts';
import type { Group } from '../../analyze/types.ts';
import { withinSequence } from '../../host/store/move-group.ts';
import { findSequence, type Sequences } from '../../host/store/sequences-store.ts';
import type { IndexedText } from './shelf-index.ts';
import type { ReadyShelf } from './use-shelf.ts';

/** Gives the fit of texts for a group, which read with a reach of `mark` percent; in the order of the texts. */
export type Ranker = (texts: readonly IndexedText[], group: Group, mark: number) => readonly Fit[];

/** Groups whose words are kept followed. */
const KEPT = 40;

/**
 * A ranker over a shelf. The words of a group are followed once until something but its step is changed, since a move
 * to another step asks nothing new of a word.
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

/** The ranker of a shelf for as long as its sequences stay. */
export function useRanker(shelf: ReadyShelf, sequences: Sequences): Ranker {
  return useMemo(() => createRanker(shelf, sequences), [shelf.index, shelf.weigher, sequences]);
}
