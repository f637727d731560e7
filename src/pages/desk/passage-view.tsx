import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { splitKey } from '../../analyze/index.ts';
import { changeChosen, findGroup, type Groups } from '../../host/store/groups-store.ts';
import { deletePassage, type StoryWord } from '../../host/store/passages-store.ts';
import type { Sequences } from '../../host/store/sequences-store.ts';
import { OutMenu } from '../../passage/print/out-menu.tsx';
import { createShader } from '../../passage/shade-line.ts';
import { setVersion, versionFor } from '../../passage/versions.ts';
import { GapList } from '../../ui/gap-list.tsx';
import { Reach } from '../../ui/reach.tsx';
import type { WordLinks } from '../../ui/word-buttons.tsx';
import { say } from '../../wording/say.ts';
import { CompareView } from './compare-view.tsx';
import { LongSentences } from './long-sentences.tsx';
import type { PassageEditor, PassageWord } from './passage-editor.ts';
import { PassageField } from './passage-field.tsx';
import { PlanView } from './plan/plan-view.tsx';
import { SourceFields } from './source-fields.tsx';
import { StoryWords } from './story-words.tsx';
import { noteSaved, openPassage, type WantedSwap } from './use-desk.ts';
import { useJudge } from './use-judge.ts';
import { usePassage } from './use-passage.ts';
import { useReport } from './use-report.ts';
import { AS_FOUND, useVersions } from './use-versions.ts';
import { VersionsTable } from './versions-table.tsx';
import { WordView } from './word-view.tsx';

interface PassageViewProps {
  readonly id: string;
  readonly groups: Groups;
  readonly sequences: Sequences;
  /** Made once the passage is open, where it can be undone. */
  readonly swap: WantedSwap | null;
  /** Another window changed it too; this one's is kept under the title given. */
  readonly onParted: (title: string) => void;
}

/** One passage: its text as the chosen group is to read it, with what stands in the way. */
export function PassageView({ id, groups, sequences, swap, onParted }: PassageViewProps) {
  const { passage, change, keep, show, isGone, fault } = usePassage(id, onParted);
  const [groupId, setGroupId] = useState(groups.chosen);
  const [beside, setBeside] = useState('');
  const [isCounting, setCounting] = useState(false);
  const [longest, setLongest] = useState<number | null>(null);
  const [word, setWord] = useState<PassageWord | null>(null);
  const editor = useRef<PassageEditor | null>(null);
  const places = useRef(new Map<string, number>());
  const made = useRef<WantedSwap | null>(null);
  const group = findGroup(groups, groupId);
  const isBeside = beside !== '' && beside !== groupId;
  const { judge, engine, fault: unloaded } = useJudge(group, sequences);
  const shader = useMemo(() => judge && createShader(judge), [judge]);
  const version = passage && versionFor(passage, groupId);
  const text = version?.text ?? '';
  const shade = useMemo(() => shader?.(text) ?? null, [shader, text]);
  const judging = useMemo(() => judge && shade && { judge, shade }, [judge, shade]);
  // A story word counts as by sight in this passage, and nowhere else.
  const storyWords = useMemo(() => version?.storyWords.map(({ word }) => word) ?? [], [version?.storyWords]);
  const report = useReport(version?.text ?? null, judging, storyWords);
  const isWanted = isCounting || isBeside;
  const versions = useVersions({ passage, groupId, groups, sequences, engine, isWanted });
  const from = versions.find((one) => one.id === beside);
  const to = versions.find((one) => one.id === groupId);
  useEffect(() => {
    if (!swap || !shade || !editor.current || made.current === swap) return;
    made.current = swap;
    history.replaceState(null, '', `#passage/${id}`);
    editor.current.replaceEverywhere(swap.word, swap.text);
    editor.current.goTo(swap.text, 0);
  }, [swap, shade, passage === null]);
  if (isGone) return <p class="note">{say('desk.passageGone')}</p>;
  if (!passage || !version) return <p class="note">{say('desk.openingPassage')}</p>;

  const write = (changed: string): void =>
    keep((now) => setVersion(now, groupId, (kept) => ({ ...kept, text: changed })));
  const addStoryWords = (words: readonly StoryWord[]): void =>
    change((now) =>
      setVersion(now, groupId, (kept) => ({
        ...kept,
        storyWords: [...kept.storyWords, ...words.map(({ word, meaning }) => ({ word, meaning }))],
      })),
    );
  const unsure = new Set(
    report?.words.filter(({ standing }) => standing === 'unsure').map((entry) => entry.word),
  );
  const links: WordLinks = {
    opened: null,
    card: null,
    isUnsure: (shown) => unsure.has(shown),
    open: (_list, shown) => {
      const n = places.current.get(shown) ?? 0;
      places.current.set(shown, n + 1);
      editor.current?.goTo(shown, n);
    },
  };
  return (
    <div class="sheet">
      {fault !== null && (
        <p class="fault" role="alert">
          {say('desk.notSaved', { fault })}
        </p>
      )}
      <div class="part">
        <SourceFields
          passage={passage}
          onChange={(fields) => change((now) => ({ ...now, ...fields }))}
          onDelete={async () => {
            await deletePassage(id);
            noteSaved();
            openPassage(null);
          }}
        />
        <div class="desk-bar">
          <span>
            <label for="desk-group" class="quiet">
              {say('desk.forGroup')}
            </label>{' '}
            <select
              id="desk-group"
              class="field"
              value={groupId}
              onChange={(event) => setGroupId(event.currentTarget.value)}
            >
              {Object.entries(groups.groups).map(([key, { name }]) => (
                <option key={key} value={key}>
                  {name}
                </option>
              ))}
            </select>
          </span>
          <span>
            <label for="desk-beside" class="quiet">
              {say('desk.beside')}
            </label>{' '}
            <select
              id="desk-beside"
              class="field"
              value={beside}
              onChange={(event) => setBeside(event.currentTarget.value)}
            >
              <option value="">{say('desk.besideNothing')}</option>
              <option value={AS_FOUND}>{say('desk.besideAsFound')}</option>
              {Object.entries(groups.groups)
                .filter(([key]) => key !== groupId && Object.hasOwn(passage.versions, key))
                .map(([key, { name }]) => (
                  <option key={key} value={key}>
                    {say('desk.besideTextFor', { group: name })}
                  </option>
                ))}
            </select>
          </span>
          <a
            class="plain"
            href={`/report.html#passage/${id}/${encodeURIComponent(groupId)}`}
            target="_blank"
            rel="noopener"
          >
            {say('desk.climbAndReport')}
          </a>
          <a
            class="plain"
            href={`/lesson.html#${encodeURIComponent(groupId)}/${id}`}
            target="_blank"
            rel="noopener"
          >
            {say('desk.makeALesson')}
          </a>
        </div>
        <details class="unfold" onToggle={(event) => setCounting(event.currentTarget.open)}>
          <summary>{say('desk.versionsAndPractice')}</summary>
          <VersionsTable versions={versions} groupId={groupId} onOpen={setGroupId} />
        </details>
        <OutMenu {...{ passage, version, shade, engine }} groupName={group?.name ?? null} />
      </div>
      {unloaded && (
        <p class="note note-wrong" role="alert">
          {say('desk.noTable', { why: unloaded.message })}
        </p>
      )}
      <div class="desk-columns">
        <div class="desk-text">
          {isBeside ? (
            from && to && <CompareView from={from} to={to} />
          ) : (
            <PassageField
              key={`${id} ${groupId}`}
              label={group ? say('desk.textForGroup', { group: group.name }) : say('desk.textForTheGroup')}
              text={text}
              shading={shade && { shade, longest }}
              onText={write}
              onSettled={show}
              onWord={setWord}
              ready={(made) => {
                editor.current = made;
              }}
            />
          )}
          {!isBeside && <p class="quiet">{say('desk.keys')}</p>}
        </div>
        <div class="desk-side">
          {word && judge && engine && !isBeside && (
            <WordView
              word={word}
              analysis={engine.analyze(word.key)}
              judge={judge}
              onEverywhere={(swap) => editor.current?.replaceEverywhere(word.text, swap)}
              onEdit={(edits) => editor.current?.edit(edits)}
              onStoryWord={(meaning) =>
                addStoryWords([{ word: splitKey(word.key).word.toLowerCase(), meaning }])
              }
              isStoryWord={storyWords.includes(splitKey(word.key).word.toLowerCase())}
            />
          )}
          {report && <Reach tally={report.tally} />}
          <StoryWords
            words={version.storyWords}
            onChange={(changed) =>
              change((now) => setVersion(now, groupId, (kept) => ({ ...kept, storyWords: changed })))
            }
          />
          {judge && shade && !isBeside && (
            <PlanView
              text={text}
              shade={shade}
              judge={judge}
              storyWords={storyWords}
              onEdit={(edits) => editor.current?.edit(edits)}
              onStoryWords={addStoryWords}
            />
          )}
          <LongSentences text={text} longest={longest} onChange={setLongest} />
          {report && groupId === groups.chosen && (
            <GapList
              gaps={report.gaps}
              links={links}
              onTaught={(pattern) =>
                void changeChosen((now) => ({ ...now, alsoTaught: [...now.alsoTaught, pattern] }))
              }
            />
          )}
        </div>
      </div>
    </div>
  );
}
