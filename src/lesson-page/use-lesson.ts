import { useEffect, useMemo, useState } from 'preact/hooks';
import { type Analyzer, compileGroup, createJudge } from '../analyze/index.ts';
import type { Group } from '../analyze/types.ts';
import { type Groups, loadGroups, watchGroups } from '../host/groups-store.ts';
import { forgetLessons } from '../host/lessons-store.ts';
import { loadEngine } from '../host/load-engine.ts';
import { loadWordBank } from '../host/load-word-bank.ts';
import { today, withinSequence } from '../host/move-group.ts';
import { loadPassages, type Passage, watchPassages } from '../host/passages-store.ts';
import { findSequence, loadSequences, type Sequences, watchSequences } from '../host/sequences-store.ts';
import {
  createKnownWords,
  findFocus,
  type LessonInput,
  rememberAnalyses,
  type WordBank,
} from '../lesson/index.ts';
import { versionFor } from '../passage/versions.ts';
import { judgeWithStoryWords } from '../passage/with-story-words.ts';

/** What a lesson can be made for, kept up to date; null until all is read. */
export interface LessonShelf {
  readonly groups: Groups;
  readonly sequences: Sequences;
  readonly passages: readonly Passage[];
}

/** What the package gives for making lessons; `failed` when it cannot be read. */
export interface LessonTools {
  readonly engine: Analyzer;
  readonly bank: WordBank;
  readonly knownTo: ReturnType<typeof createKnownWords>;
}

/** Groups, sequences and passages. */
export function useStored(): LessonShelf | null {
  const [groups, setGroups] = useState<Groups | null>(null);
  const [sequences, setSequences] = useState<Sequences | null>(null);
  const [passages, setPassages] = useState<readonly Passage[] | null>(null);
  useEffect(() => {
    const controller = new AbortController();
    const { signal } = controller;
    const list = (): Promise<readonly Passage[]> =>
      // A lesson without a passage needs no database.
      loadPassages()
        .catch(() => [])
        .then((found) => {
          setPassages(found);
          return found;
        });
    watchGroups(setGroups, signal);
    watchSequences(setSequences, signal);
    watchPassages(() => void list(), signal);
    void loadSequences().then((loaded) => setSequences((known) => known ?? loaded));
    void Promise.all([loadGroups(), list()]).then(([loaded, found]) => {
      setGroups((known) => known ?? loaded);
      return forgetLessons(
        ({ group, passage }) =>
          (group in loaded.groups || group in loaded.unread) &&
          (passage === null || found.length === 0 || found.some(({ id }) => id === passage)),
      );
    });
    return () => controller.abort();
  }, []);
  return groups && sequences && passages && { groups, sequences, passages };
}

/** The analyser and the words, loaded once for the page. */
export function useTools(): LessonTools | 'failed' | null {
  const [tools, setTools] = useState<LessonTools | 'failed' | null>(null);
  useEffect(() => {
    let current = true;
    Promise.all([loadEngine(), loadWordBank()]).then(
      ([loaded, bank]) => {
        const engine = rememberAnalyses(loaded);
        if (current) setTools({ engine, bank, knownTo: createKnownWords(bank, engine) });
      },
      () => current && setTools('failed'),
    );
    return () => {
      current = false;
    };
  }, []);
  return tools;
}

/** What the parts of a lesson are made from. */
export function useLessonInput(
  tools: LessonTools | null,
  { groups, sequences }: LessonShelf,
  groupId: string,
  passage: Passage | null,
): LessonInput | null {
  const given: Group | undefined = groups.groups[groupId];
  return useMemo(() => {
    if (!tools || !given) return null;
    const { engine, bank, knownTo } = tools;
    const sequence = findSequence(sequences, given.sequence);
    const version = passage && versionFor(passage, groupId);
    const storyWords = version?.storyWords.map(({ word }) => word) ?? [];
    // A story word is taught as a whole for this passage, so it is for the lesson around it.
    const group = withinSequence(given, sequence);
    const judge = judgeWithStoryWords(createJudge(engine, compileGroup(group, sequence)), storyWords);
    const known = knownTo(judge);
    return {
      group,
      sequence,
      day: today(),
      bank,
      analyzer: engine,
      judge,
      known,
      focus: findFocus(group, sequence, known.knows),
      passage: passage && version && { title: passage.title, text: version.text },
    };
  }, [tools, given, sequences, groupId, passage]);
}
