import { type Climber, type CompiledGroup, type Judge, splitKey } from '../analyze/index.ts';
import type { PatternId, WordKey } from '../analyze/types.ts';

/** Returns a judge for a group that learns the given words as whole words for one passage. The words are in lower case. */
export function judgeWithStoryWords(judge: Judge, words: readonly string[]): Judge {
  if (words.length === 0) return judge;
  const isStoryWord = oneOf(words);
  const verdict = (key: WordKey) =>
    isStoryWord(key) ? ({ standing: 'by-sight', missing: [] } as const) : judge(key);
  return Object.assign(verdict, {
    group: judge.group,
    lacks: judge.lacks,
    ifTaught: (id: PatternId) => judgeWithStoryWords(judge.ifTaught(id), words),
    forGroup: (group: CompiledGroup) => judgeWithStoryWords(judge.forGroup(group), words),
    standingFor: (group: CompiledGroup) => {
      const standing = judge.standingFor(group);
      return (key: WordKey) => (isStoryWord(key) ? 'by-sight' : standing(key));
    },
  });
}

/** Does the same as `judgeWithStoryWords` for every step of a sequence. The group reads a story word from the start. */
export function climbWithStoryWords(climber: Climber, words: readonly string[]): Climber {
  if (words.length === 0) return climber;
  const isStoryWord = oneOf(words);
  return Object.assign((key: WordKey) => (isStoryWord(key) ? { reads: 0, counts: 0 } : climber(key)), {
    steps: climber.steps,
  });
}

function oneOf(words: readonly string[]): (key: WordKey) => boolean {
  const known = new Set(words);
  return (key) => known.has(splitKey(key).word.toLowerCase());
}
