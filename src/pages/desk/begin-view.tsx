import { useState } from 'preact/hooks';
import { findGroup, type Groups } from '../../host/store/groups-store.ts';
import { findSequence, type Sequences } from '../../host/store/sequences-store.ts';
import { typedStore } from '../../host/store/typed-store.ts';
import type { FoundText } from '../../passage/found-text.ts';
import { DRAFT_INSTRUCTIONS } from '../../rewrite/index.ts';
import { sayList } from '../../ui/say-list.ts';
import { useTyped } from '../../ui/use-typed.ts';
import { say } from '../../wording/say.ts';
import { CancelButton, ModelPart } from './model/model-part.tsx';
import { useModel } from './model/use-model.ts';

interface BeginViewProps {
  readonly groups: Groups;
  readonly sequences: Sequences;
  /** Called when a draft was written. `says` is the message about the draft for the teacher. */
  readonly onBegun: (draft: FoundText, says: string) => Promise<void>;
}

/** A draft as the frames and the model give it. */
interface Draft extends FoundText {
  readonly practised: number;
  readonly used: readonly string[];
}

/**
 * The number of versions from which one is chosen at random. The number is so large that each press gives another
 * draft.
 */
const VERSIONS = 1_000_000;

/** Writes a draft for the chosen group from the sentence frames of the lesson, or with the language model of the browser. */
export function BeginView({ groups, sequences, onBegun }: BeginViewProps) {
  const { typed, type: setTopic, done } = useTyped(typedStore, 'topic');
  const topic = typed ?? '';
  const [isWriting, setIsWriting] = useState(false);
  const [fault, setFault] = useState<string | null>(null);
  const [modelSays, setModelSays] = useState<string | null>(null);
  const user = useModel(DRAFT_INSTRUCTIONS);
  const group = findGroup(groups, groups.chosen);
  if (!group) return null;

  const wish = () => ({
    group,
    sequence: findSequence(sequences, group.sequence),
    topic: topic.toLowerCase().match(/[\p{L}'’-]+/gu) ?? [],
    version: Math.floor(Math.random() * VERSIONS),
  });
  const tooLittle = say('desk.tooLittleKnown', { group: group.name });

  const put = async (
    { title, text, practised, used }: Draft,
    wished: readonly string[],
    isADraft: 'desk.isADraft' | 'desk.isAModelDraft',
  ): Promise<void> => {
    const has = new Set(used.map((word) => word.toLowerCase()));
    const unused = [...new Set(wished)].filter((word) => !has.has(word));
    const says = [
      say(isADraft, { count: practised }),
      ...(unused.length > 0 ? [say('desk.wordsNotUsed', { words: sayList(unused) })] : []),
    ];
    await onBegun({ title, text }, says.join(' '));
    done();
  };
  /** Does the work with the frames, or puts a draft on the desk. A fault of it is a fault of ours. */
  const attempt = async (work: () => Promise<void>): Promise<void> => {
    setFault(null);
    setIsWriting(true);
    try {
      await work();
    } catch (error) {
      setFault(say('desk.draftFailed', { why: error instanceof Error ? error.message : String(error) }));
    } finally {
      setIsWriting(false);
    }
  };
  const begin = (): Promise<void> =>
    attempt(async () => {
      // The grammar is loaded when the teacher first asks for a draft.
      const { beginDraft } = await import('./begin-draft.ts');
      const wished = wish();
      const draft = await beginDraft(wished);
      if (!draft) return setFault(tooLittle);
      await put(draft, wished.topic, 'desk.isADraft');
    });
  const beginByModel = async (): Promise<void> => {
    setFault(null);
    setModelSays(null);
    const wished = wish();
    const written: Draft[] = [];
    await user.run(async (opening, signal) => {
      const { draftByModel } = await import('./begin-draft.ts');
      const draft = await draftByModel(wished, opening, signal);
      if (draft === 'little') setModelSays(tooLittle);
      else if (draft === 'none') setModelSays(say('desk.noModelDraft'));
      else written.push(draft);
    });
    const [draft] = written;
    if (draft) await attempt(() => put(draft, wished.topic, 'desk.isAModelDraft'));
  };
  const isBusy = isWriting || user.work.isWorking;
  const status = user.work.isWorking ? say('desk.beginning') : modelSays;
  return (
    <section class="part" aria-labelledby="begin-title">
      <h2 id="begin-title">{say('desk.beginAPassage')}</h2>
      <p class="quiet">{say('desk.aboutBeginning', { group: group.name })}</p>
      <div class="picker">
        <label for="begin-topic">{say('desk.topicWords')}</label>
        <input
          id="begin-topic"
          class="field"
          value={topic}
          placeholder={say('desk.topicExample')}
          lang="en"
          dir="ltr"
          onInput={(event) => setTopic(event.currentTarget.value)}
        />
      </div>
      <button type="button" class="plain" disabled={isBusy} onClick={() => void begin()}>
        {say('desk.beginAPassage')}
      </button>
      <div aria-live="polite">
        {isWriting && <p class="note">{say('desk.beginning')}</p>}
        {fault !== null && <p class="note note-wrong">{fault}</p>}
      </div>
      <ModelPart
        title={say('desk.writeWithModel')}
        about={say('desk.aboutModelDraft', { group: group.name })}
        user={user}
        says={status !== null && <p class="note">{status}</p>}
      >
        <p class="row">
          <button type="button" class="plain" disabled={isBusy} onClick={() => void beginByModel()}>
            {say('desk.writeTheDraft')}
          </button>
          <CancelButton user={user} />
        </p>
      </ModelPart>
    </section>
  );
}
