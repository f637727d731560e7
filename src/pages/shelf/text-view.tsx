import { useMemo, useState } from 'preact/hooks';
import { compileGroup, createJudge, vet } from '../../analyze/index.ts';
import type { Groups } from '../../host/store/groups-store.ts';
import { withinSequence } from '../../host/store/move-group.ts';
import { findSequence, type Sequences } from '../../host/store/sequences-store.ts';
import { changeText, loadWhole, type ShelfText } from '../../host/store/shelf-store.ts';
import { typedStore } from '../../host/store/typed-store.ts';
import { addPassageOnce } from '../../passage/add-passage.ts';
import { FoundAgain } from '../../ui/found-again.tsx';
import { useTyped } from '../../ui/use-typed.ts';
import { ClimbPart } from '../report/climb-part.tsx';
import { GapList } from '../report/gap-list.tsx';
import '../report/report.css';
import { Reach } from '../../ui/reach.tsx';
import { sayDay } from '../../ui/say-day.ts';
import { sayList } from '../../ui/say-list.ts';
import { say } from '../../wording/say.ts';
import { StandingList } from '../report/standing-list.tsx';
import { joinTags } from './add-to-shelf.ts';
import { DeleteQuestion } from './delete-question.tsx';
import { editText, removeTexts } from './edit-texts.ts';
import { NotesField } from './notes-field.tsx';
import type { IndexedText } from './shelf-index.ts';
import { listTags } from './sort-texts.ts';
import { TagField } from './tag-field.tsx';
import type { ReadyShelf } from './use-shelf.ts';

interface TextViewProps {
  readonly shelf: ReadyShelf;
  readonly text: IndexedText;
  readonly groups: Groups;
  readonly sequences: Sequences;
  readonly groupId: string;
  readonly onGroup: (id: string) => void;
}

/** Shows all details of one text of the shelf: its tags and notes, and its results for a group. */
export function TextView({ shelf, text, groups, sequences, groupId, onGroup }: TextViewProps) {
  const { id } = text;
  const stored = groups.groups[groupId]!;
  const sequence = findSequence(sequences, stored.sequence);
  const counts = useMemo(() => shelf.index.countsOf(text), [text.words]);
  const { judge, report } = useMemo(() => {
    const group = compileGroup(withinSequence(stored, sequence), sequence);
    const judge = createJudge(shelf.engine, group);
    return { judge, report: vet(counts, judge) };
  }, [counts, shelf.engine, stored, sequence]);
  const reported = useMemo(
    () => ({
      ...counts,
      title: text.title,
      source: null,
      groupId: null,
      adapted: false,
      storyWords: [],
    }),
    [counts, text.title],
  );
  return (
    <div class="sheet">
      <p>
        <a class="plain" href="#texts">
          {say('shelf.allTexts')}
        </a>
      </p>
      <div class="part">
        <TitleField
          key={id}
          id={id}
          title={text.title}
          onChange={(title) => editText(id, say('shelf.titleChanged', { title }), () => ({ title }))}
        />
        <p class="quiet shelf-source">{describeSource(text)}</p>
        <TextActions text={text} groupId={groupId} />
        <TagField
          key={id}
          owner={id}
          label={say('shelf.tags')}
          tags={text.tags}
          known={listTags(shelf.texts).map(({ tag }) => tag)}
          onAdd={(tags) =>
            editText(id, say('shelf.tagsAdded', { tags: sayList(tags) }), (now) => ({
              tags: joinTags(now.tags, tags),
            }))
          }
          onRemove={(tag) =>
            void editText(id, say('shelf.tagRemoved', { tag }), (now) => ({
              tags: now.tags.filter((own) => own !== tag),
            }))
          }
        />
        <NotesField
          key={id}
          notes={text.notes}
          onChange={(notes) => void changeText(id, () => ({ notes }))}
        />
      </div>
      <div class="shelf-bar">
        <label>
          <span class="quiet">{say('report.for')}</span>
          <select class="field" value={groupId} onChange={(event) => onGroup(event.currentTarget.value)}>
            {Object.entries(groups.groups).map(([key, { name }]) => (
              <option key={key} value={key}>
                {name}
              </option>
            ))}
          </select>
        </label>
      </div>
      <div class="report">
        <Reach tally={report.tally} />
        <ClimbPart
          text={reported}
          engine={shelf.engine}
          groups={groups.groups}
          sequences={sequences}
          groupId={groupId}
        />
        <section class="report-part" aria-labelledby="gaps-title">
          <h2 id="gaps-title">{say('ui.missingPatterns')}</h2>
          <GapList gaps={report.gaps} group={judge.group} />
        </section>
        <section class="report-part" aria-labelledby="words-title">
          <h2 id="words-title">{say('report.words')}</h2>
          <StandingList words={report.words} />
        </section>
      </div>
    </div>
  );
}

interface TitleFieldProps extends Pick<ShelfText, 'id' | 'title'> {
  readonly onChange: (title: string) => Promise<void>;
}

function TitleField({ id, title, onChange }: TitleFieldProps) {
  const { typed, isFound, type, done } = useTyped(typedStore, `title of ${id}`);
  const keep = (text: string | null): void =>
    done(text !== null && text !== title ? onChange(text) : undefined);
  return (
    <>
      <label for="shelf-title" class="unseen">
        {say('shelf.title')}
      </label>
      <input
        id="shelf-title"
        type="text"
        class="field field-large"
        value={typed ?? title}
        onInput={(event) => type(event.currentTarget.value)}
        onChange={(event) => keep(event.currentTarget.value)}
      />
      {isFound && <FoundAgain onKeep={() => keep(typed)} onForget={() => done()} />}
    </>
  );
}

interface TextActionsProps {
  readonly text: IndexedText;
  /** The group for which a lesson is made from the text. */
  readonly groupId: string;
}

function TextActions({ text: { id, url, isKept }, groupId }: TextActionsProps) {
  const [asking, setAsking] = useState(false);
  const goOn = async (addressOf: (passage: string) => string): Promise<void> => {
    const whole = await loadWhole(id);
    if (!whole || whole.text === null) return;
    const { title, byline, date, text } = whole;
    const passage = await addPassageOnce({ title, text, url, byline, date });
    location.assign(addressOf(passage.id));
  };
  if (asking)
    return (
      <DeleteQuestion
        says={say('shelf.deleteOne')}
        onDelete={() => {
          void removeTexts([id]);
          location.hash = '#texts';
        }}
        onKeep={() => setAsking(false)}
      />
    );
  return (
    <p class="row">
      {isKept && (
        <>
          <button
            type="button"
            class="action"
            onClick={() => void goOn((passage) => `/desk.html#passage/${passage}`)}
          >
            {say('shelf.putOnDesk')}
          </button>
          <button
            type="button"
            class="plain"
            onClick={() => void goOn((passage) => `/lesson.html#${encodeURIComponent(groupId)}/${passage}`)}
          >
            {say('desk.makeALesson')}
          </button>
        </>
      )}
      <a class="plain" href={`/report.html#shelf/${id}`} target="_blank" rel="noopener">
        {say('panel.climbAndReport')}
      </a>
      {url !== null && /^https?:/i.test(url) && (
        <a class="plain" href={url} target="_blank" rel="noopener noreferrer">
          {say('shelf.openPage')}
        </a>
      )}
      <button type="button" class="plain" onClick={() => setAsking(true)}>
        {say('shelf.delete')}
      </button>
    </p>
  );
}

function describeSource({ byline, url, date, shelved, isKept }: IndexedText): string {
  const from = [byline, url, date].filter((part) => part !== null && part !== '');
  const day = sayDay(shelved);
  return [...from, isKept ? say('shelf.shelvedWithText', { day }) : say('shelf.shelvedWords', { day })].join(
    ' · ',
  );
}
