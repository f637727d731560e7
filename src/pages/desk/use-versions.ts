import { useMemo } from 'preact/hooks';
import { type Analyzer, compileGroup, createJudge, type Judge, tallyText } from '../../analyze/index.ts';
import { findGroup, type Groups } from '../../host/store/groups-store.ts';
import { withinSequence } from '../../host/store/move-group.ts';
import { findSequence, type Sequences } from '../../host/store/sequences-store.ts';
import { countPractice, type Practice } from '../../passage/count-practice.ts';
import { countWords } from '../../passage/count-words.ts';
import type { Passage, PassageVersion } from '../../passage/kept/passage.ts';
import { createShader } from '../../passage/shade-line.ts';
import { versionFor } from '../../passage/versions.ts';
import { judgeWithStoryWords } from '../../passage/with-story-words.ts';
import { say } from '../../wording/say.ts';

/** The name of the original text, used beside the ids of groups. */
export const AS_FOUND = 'as-found';

/** The figures of one version of a passage. */
export interface VersionFigures {
  /** The id of the version's group. `AS_FOUND` marks the text as found, counted for the current group. */
  readonly id: string;
  readonly name: string;
  readonly text: string;
  /** The number of running words and names. */
  readonly words: number;
  /** In percent. */
  readonly reach: number;
  readonly practice: Practice;
}

interface VersionsOf {
  readonly passage: Passage | null;
  readonly groupId: string;
  readonly groups: Groups;
  readonly sequences: Sequences;
  readonly engine: Analyzer | null;
  /** Whether the figures are wanted. Nothing is counted while nobody looks at the figures. */
  readonly isWanted: boolean;
}

/**
 * Returns the figures of the text as found and of each version, as read by the group of the version; empty while no
 * figures are wanted.
 */
export function useVersions(of: VersionsOf): readonly VersionFigures[] {
  const { passage, groupId, groups, sequences, engine, isWanted } = of;
  const judges = useMemo(() => {
    const known = new Map<string, ReturnType<typeof makeJudge>>();
    return (id: string, engine: Analyzer) => {
      const judging = known.get(id) ?? makeJudge(id, engine, groups, sequences);
      known.set(id, judging);
      return judging;
    };
  }, [engine, groups, sequences]);
  return useMemo(() => {
    if (!passage || !engine || !isWanted || !findGroup(groups, groupId)) return [];
    const figures = (id: string, forGroup: string, name: string, version: PassageVersion) => {
      const { text, storyWords } = version;
      const { judge, shader } = judges(forGroup, engine);
      const counts = countWords(text, shader(text));
      const withWords = judgeWithStoryWords(
        judge,
        storyWords.map(({ word }) => word),
      );
      const { running, names, reach } = tallyText(counts, withWords);
      const practice = countPractice(counts, withWords, engine.speaking(withWords.group.speech));
      return { id, name, text, words: running + names, reach, practice };
    };
    const ids = new Set([...Object.keys(passage.versions), groupId]);
    return [
      figures(AS_FOUND, groupId, say('desk.asFound'), { text: passage.original, storyWords: [] }),
      ...[...ids].flatMap((id) => {
        const group = findGroup(groups, id);
        return group ? figures(id, id, group.name, versionFor(passage, id)) : [];
      }),
    ];
  }, [passage, groupId, groups, judges, engine, isWanted]);
}

function makeJudge(
  id: string,
  engine: Analyzer,
  groups: Groups,
  sequences: Sequences,
): { judge: Judge; shader: ReturnType<typeof createShader> } {
  const group = groups.groups[id]!;
  const sequence = findSequence(sequences, group.sequence);
  const judge = createJudge(engine, compileGroup(withinSequence(group, sequence), sequence));
  return { judge, shader: createShader(judge) };
}
