import { useCallback, useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { countedAs } from '../../host/store/change-group.ts';
import { setCountsAs, setTaught } from '../../host/store/edit-group.ts';
import { findGroup, type Groups } from '../../host/store/groups-store.ts';
import { deletePassage, putPassages } from '../../host/store/passages-store.ts';
import { findSequence, type Sequences } from '../../host/store/sequences-store.ts';
import type { StoryWord } from '../../passage/kept/passage.ts';
import { OutMenu } from '../../passage/print/out-menu.tsx';
import { createShader } from '../../passage/shade-line.ts';
import { versionFor } from '../../passage/versions.ts';
import { noteEdit } from '../../ui/edit-log.ts';
import { GapList } from '../../ui/gap-list.tsx';
import { patternName } from '../../ui/pattern-name.ts';
import { Reach } from '../../ui/reach.tsx';
import type { WordLinks } from '../../ui/word-buttons.tsx';
import { say } from '../../wording/say.ts';
import { CompareView } from './compare-view.tsx';
import { DeskBar } from './desk-bar.tsx';
import { LongSentences } from './long-sentences.tsx';
import type { PassageEditor, PassageWord } from './passage-editor.ts';
import { PassageField } from './passage-field.tsx';
import {
  addStoryWords,
  createPlaceCounter,
  findPair,
  isBeside,
  needsVersions,
  openFor,
  type PassageState,
  setStoryWords,
  storyWordOf,
  takeStoryWords,
  writeText,
} from './passage-state.ts';
import { findStep } from './plan/find-step.ts';
import { PlanReview } from './plan/plan-review.tsx';
import { PlanView } from './plan/plan-view.tsx';
import { usePlan } from './plan/use-plan.ts';
import { RewriteView } from './rewrite/rewrite-view.tsx';
import { PassageTitle, SourceFields } from './source-fields.tsx';
import { StoryWords } from './story-words.tsx';
import { noteSaved, openPassage, type WantedSwap } from './use-desk.ts';
import { useJudge } from './use-judge.ts';
import { usePassage } from './use-passage.ts';
import { useReport } from './use-report.ts';
import { useSteps } from './use-steps.ts';
import { useVersions } from './use-versions.ts';
import { VarietyNote } from './variety-note.tsx';
import { VersionsTable } from './versions-table.tsx';
import { WordView } from './word-view.tsx';

interface PassageViewProps {
  readonly id: string;
  readonly groups: Groups;
  readonly sequences: Sequences;
  /** The swap to make once the passage is open, so that the swap can be undone in the passage. */
  readonly swap: WantedSwap | null;
  /** Called when another window has changed the passage too. The version of this window is kept under the given title. */
  readonly onParted: (title: string) => void;
}

/** Shows one passage: its text for the chosen group, with the words that the group cannot read easily. */
export function PassageView({ id, groups, sequences, swap, onParted }: PassageViewProps) {
  const { passage, change, keep, show, isGone, saved, fault } = usePassage(id, onParted);
  const [state, setState] = useState(() => openFor(groups.chosen));
  const look = (change: Partial<PassageState>): void => setState((now) => ({ ...now, ...change }));
  const [word, setWord] = useState<PassageWord | null>(null);
  const editor = useRef<PassageEditor | null>(null);
  const [nextPlace] = useState(createPlaceCounter);
  const made = useRef<WantedSwap | null>(null);
  const { groupId, longest } = state;
  const group = findGroup(groups, groupId);
  const hasBeside = isBeside(state);
  const { judge, engine, fault: unloaded } = useJudge(group, sequences);
  const shader = useMemo(() => judge && createShader(judge), [judge]);
  const version = passage && versionFor(passage, groupId);
  const text = version?.text ?? '';
  const shade = useSteps(useMemo(() => shader?.inSteps(text) ?? null, [shader, text]));
  const judging = useMemo(() => judge && shade && { judge, shade }, [judge, shade]);
  // A story word counts as a by-sight word in this passage only.
  const storyWords = useMemo(() => version?.storyWords.map(({ word }) => word) ?? [], [version?.storyWords]);
  const report = useReport(version?.text ?? null, judging, storyWords);
  const isWanted = needsVersions(state);
  const versions = useVersions({ passage, groupId, groups, sequences, engine, isWanted });
  const pair = findPair(versions, state);
  const planner = usePlan(text, judging, storyWords, (edits, words) => {
    editor.current?.edit(edits, {
      make: () => change((now) => addStoryWords(now, groupId, words)),
      undo: () => change((now) => takeStoryWords(now, groupId, words)),
    });
  });
  const { proposal } = planner.plan;
  const isPlanning = planner.isOpen && !hasBeside;
  useEffect(planner.close, [groupId, id]);
  const sequence = group && findSequence(sequences, group.sequence);
  const stepOf = useCallback(
    (target: number) =>
      engine && group && shade ? findStep(text, shade, { engine, group, sequence, target }) : null,
    [engine, group, sequence, shade, text],
  );
  useEffect(() => {
    if (!swap || !shade || !editor.current || made.current === swap) return;
    made.current = swap;
    history.replaceState(null, '', `#passage/${id}`);
    editor.current.replaceEverywhere(swap.word, swap.text);
    editor.current.goTo(swap.text, 0);
  }, [swap, shade, passage === null]);
  if (isGone) return <p class="note">{say('desk.passageGone')}</p>;
  if (!passage || !version) return <p class="note">{say('desk.openingPassage')}</p>;

  const teach = (words: readonly StoryWord[]): void => change((now) => addStoryWords(now, groupId, words));
  const unsure = new Set(
    report?.words.filter(({ standing }) => standing === 'unsure').map((entry) => entry.word),
  );
  const links: WordLinks = {
    opened: null,
    card: null,
    isUnsure: (shown) => unsure.has(shown),
    open: (_list, shown) => void editor.current?.goTo(shown, nextPlace(shown)),
  };
  return (
    <div class="sheet">
      {fault !== null && (
        <p class="fault" role="alert">
          {say('desk.notSaved', { fault })}
        </p>
      )}
      <div class="part desk-head">
        <PassageTitle passage={passage} onChange={(fields) => change((now) => ({ ...now, ...fields }))} />
        <DeskBar passage={passage} groups={groups} state={state} saved={saved} onChange={look} />
      </div>
      {unloaded && (
        <p class="note note-wrong" role="alert">
          {say('desk.noTable', { why: unloaded.message })}
        </p>
      )}
      <div class={`desk-columns${isPlanning ? ' is-planning' : ''}`}>
        {isPlanning && proposal && judging && (
          <PlanReview
            {...{ planner, proposal, judging, storyWords }}
            findStep={stepOf}
            report={`/report.html#passage/${id}/${encodeURIComponent(groupId)}`}
            onRewrite={() => editor.current?.goToHard()}
          />
        )}
        <div class="desk-text" hidden={isPlanning}>
          {hasBeside ? (
            pair && <CompareView {...pair} />
          ) : (
            <PassageField
              key={`${id} ${groupId}`}
              label={group ? say('desk.textForGroup', { group: group.name }) : say('desk.textForTheGroup')}
              text={text}
              shading={shade && { shade, longest, preTeach: storyWords }}
              onText={(changed) => keep((now) => writeText(now, groupId, changed))}
              onSettled={show}
              onWord={setWord}
              ready={(made) => {
                editor.current = made;
              }}
            />
          )}
          {!hasBeside && <p class="quiet">{say('desk.keys')}</p>}
        </div>
        <div class="desk-side">
          {word && judge && engine && group && !hasBeside && !isPlanning && (
            <WordView
              word={word}
              analysis={engine.analyze(word.key)}
              judge={judge}
              onEverywhere={(swap) => editor.current?.replaceEverywhere(word.text, swap)}
              onEdit={(edits) => editor.current?.edit(edits)}
              onStoryWord={(meaning) => teach([{ word: storyWordOf(word.key), meaning }])}
              isStoryWord={storyWords.includes(storyWordOf(word.key))}
              counts={countedAs(group, word.key)}
              onCounts={async (as, says) => noteEdit(says, await setCountsAs(groupId, word.key, as))}
            />
          )}
          {report && <Reach tally={report.tally} />}
          <StoryWords
            words={version.storyWords}
            onChange={(changed) => change((now) => setStoryWords(now, groupId, changed))}
          />
          {judging && !hasBeside && <PlanView planner={planner} text={text} />}
          {judge && engine && shade && !hasBeside && (
            <RewriteView
              {...{ text, shade, judge, engine, longest, word }}
              preTeach={storyWords}
              onFound={(found) =>
                void planner.offer(
                  found.map(({ sentence, candidates }) => ({
                    sentence: sentence.text,
                    texts: candidates.map((candidate) => candidate.text),
                  })),
                )
              }
            />
          )}
          {judge && !hasBeside && !isPlanning && (
            <VarietyNote
              text={text}
              accent={judge.group.accent}
              onEdit={(edits) => editor.current?.edit(edits)}
            />
          )}
          <OutMenu {...{ passage, version, shade, engine }} groupName={group?.name ?? null} />
          <LongSentences text={text} longest={longest} onChange={(most) => look({ longest: most })} />
          {report && groupId === groups.chosen && (
            <GapList
              gaps={report.gaps}
              links={links}
              onTaught={async (pattern, isTaught) => {
                const says = say(isTaught ? 'card.nowTaught' : 'card.notTaught', {
                  pattern: patternName(pattern),
                });
                noteEdit(says, await setTaught(groupId, pattern, isTaught));
              }}
            />
          )}
        </div>
        <div class="part desk-more">
          <SourceFields
            passage={passage}
            onChange={(fields) => change((now) => ({ ...now, ...fields }))}
            onDelete={async () => {
              await deletePassage(id);
              noteEdit(say('desk.deleted', { title: passage.title }), async () => {
                await putPassages([passage]);
                noteSaved();
                openPassage(id);
              });
              noteSaved();
              openPassage(null);
            }}
          />
          <details class="unfold" onToggle={(event) => look({ isCounting: event.currentTarget.open })}>
            <summary>{say('desk.versionsAndPractice')}</summary>
            <VersionsTable versions={versions} groupId={groupId} onOpen={(id) => look({ groupId: id })} />
          </details>
        </div>
      </div>
    </div>
  );
}
