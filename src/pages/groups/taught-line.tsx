import type { SequenceStep } from '../../analyze/types.ts';
import { patternsInShort } from '../../ui/patterns-in-short.ts';
import { sayWith } from '../../wording/say.ts';

interface TaughtLineProps extends Pick<SequenceStep, 'teaches' | 'bySight'> {
  /** The sign between the patterns and the words taught by sight. */
  readonly between?: string;
}

/** The patterns and words that a step or a pasted piece teaches, in a line: `ai as in rain; bl, cl at the start of a word; by sight: the, of`. */
export function TaughtLine({ teaches, bySight, between = '; ' }: TaughtLineProps) {
  return (
    <>
      {teaches.length > 0 && patternsInShort(teaches)}
      {teaches.length > 0 && bySight.length > 0 && between}
      {bySight.length > 0 &&
        sayWith('sequences.bySight', { words: <span lang="en">{bySight.join(', ')}</span> })}
    </>
  );
}
