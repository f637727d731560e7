import { useEffect, useMemo, useState } from 'preact/hooks';
import { type Analyzer, compileGroup, createJudge, speechOf } from '../../analyze/index.ts';
import { loadEngine } from '../../host/data/load-engine.ts';
import { loadOnce } from '../../host/data/load-once.ts';
import { loadWordBank } from '../../host/data/load-word-bank.ts';
import { forgetSheets, loadSheets } from '../../host/store/earlier-sheets-store.ts';
import { findGroup, type Groups, loadGroups, watchGroups } from '../../host/store/groups-store.ts';
import { forgetLessons } from '../../host/store/lessons-store.ts';
import { today, withinSequence } from '../../host/store/move-group.ts';
import { loadPassages, watchPassages } from '../../host/store/passages-store.ts';
import {
  findSequence,
  loadSequences,
  type Sequences,
  watchSequences,
} from '../../host/store/sequences-store.ts';
import {
  createKnownWords,
  type EarlierSheet,
  findFocus,
  type LessonInput,
  rememberAnalyses,
  type WordBank,
} from '../../lesson/index.ts';
import type { Passage } from '../../passage/kept/passage.ts';
import { versionFor } from '../../passage/versions.ts';
import { judgeWithStoryWords } from '../../passage/with-story-words.ts';
import { useWatched } from '../../ui/use-watched.ts';

/** The groups and passages that a lesson can be made for, kept up to date; null until all are read. */
export interface LessonShelf {
  readonly groups: Groups;
  readonly sequences: Sequences;
  readonly passages: readonly Passage[];
}

/** The data of the package for making lessons. */
export interface LessonTools {
  readonly engine: Analyzer;
  readonly bank: WordBank;
  readonly knownTo: ReturnType<typeof createKnownWords>;
}

// A lesson without a passage works without the database.
const loadFound = (): Promise<readonly Passage[]> => loadPassages().catch(() => []);
const watchFound = (onChange: (passages: readonly Passage[]) => void, signal: AbortSignal): void =>
  watchPassages(() => void loadFound().then(onChange), signal);

/**
 * Returns the groups, sequences and passages, or null until they have been read. Then deletes the lessons of deleted
 * groups and passages.
 */
export function useStored(): LessonShelf | null {
  const groups = useWatched(loadGroups, watchGroups);
  const sequences = useWatched(loadSequences, watchSequences);
  const passages = useWatched(loadFound, watchFound);
  const isRead = groups !== null && passages !== null;
  useEffect(() => {
    if (!groups || !passages) return;
    void forgetSheets((group) => Object.hasOwn(groups.groups, group) || Object.hasOwn(groups.unread, group));
    void forgetLessons(
      ({ group, passage }) =>
        (Object.hasOwn(groups.groups, group) || Object.hasOwn(groups.unread, group)) &&
        (passage === null || passages.length === 0 || passages.some(({ id }) => id === passage)),
    );
  }, [isRead]);
  return groups && sequences && passages && { groups, sequences, passages };
}

/**
 * Loads the analyser and the words once, so that each word is analysed only once. Rejects if the package cannot be
 * read.
 */
export const loadTools = loadOnce<LessonTools>(async () => {
  const [loaded, bank] = await Promise.all([loadEngine(), loadWordBank()]);
  const engine = rememberAnalyses(loaded);
  return { engine, bank, knownTo: createKnownWords(bank, engine) };
});

/** The input of the parts of a lesson. */
export function useLessonInput(
  tools: LessonTools | null,
  { groups, sequences }: LessonShelf,
  groupId: string,
  passage: Passage | null,
): LessonInput | null {
  const given = findGroup(groups, groupId);
  const earlier = useSheets(groupId);
  const input = useMemo(() => {
    if (!tools || !given) return null;
    const { engine, bank, knownTo } = tools;
    const sequence = findSequence(sequences, given.sequence);
    const version = passage && versionFor(passage, groupId);
    const storyWords = version?.storyWords.map(({ word }) => word) ?? [];
    // A story word is taught as a whole word for this passage, and so also for its lesson.
    const group = withinSequence(given, sequence);
    const judge = judgeWithStoryWords(createJudge(engine, compileGroup(group, sequence)), storyWords);
    const known = knownTo(judge);
    return {
      group,
      sequence,
      day: today(),
      bank,
      analyzer: engine.speaking(speechOf(group)),
      judge,
      known,
      focus: findFocus(group, sequence, known.knows),
      passage: passage && version && { title: passage.title, text: version.text },
    };
  }, [tools, given, sequences, groupId, passage]);
  return useMemo(() => (input && earlier ? { ...input, earlier } : null), [input, earlier]);
}

/**
 * Returns the earlier sheets of the group, as they were when the page was opened. Null until the sheets have been read,
 * empty if they cannot be read.
 */
function useSheets(group: string): readonly EarlierSheet[] | null {
  const [sheets, setSheets] = useState<readonly EarlierSheet[] | null>(null);
  useEffect(() => {
    let current = true;
    const show = (read: readonly EarlierSheet[]): void => {
      if (current) setSheets(read);
    };
    loadSheets(group).then(show, () => show([]));
    return () => {
      current = false;
    };
  }, [group]);
  return sheets;
}
