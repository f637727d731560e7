import { useState } from 'preact/hooks';
import { findGroup, type Groups } from '../../host/store/groups-store.ts';
import { findSequence, type Sequences } from '../../host/store/sequences-store.ts';
import { typedStore } from '../../host/store/typed-store.ts';
import type { FoundText } from '../../passage/found-text.ts';
import { sayList } from '../../ui/say-list.ts';
import { useTyped } from '../../ui/use-typed.ts';
import { say } from '../../wording/say.ts';

interface BeginViewProps {
  readonly groups: Groups;
  readonly sequences: Sequences;
  /** Called when a draft was written. `says` is the message about the draft for the teacher. */
  readonly onBegun: (draft: FoundText, says: string) => Promise<void>;
}

/**
 * The number of versions from which one is chosen at random. The number is so large that each press gives another
 * draft.
 */
const VERSIONS = 1_000_000;

/** Writes a draft for the chosen group from the sentence frames of the lesson. */
export function BeginView({ groups, sequences, onBegun }: BeginViewProps) {
  const { typed, type: setTopic, done } = useTyped(typedStore, 'topic');
  const topic = typed ?? '';
  const [isWriting, setIsWriting] = useState(false);
  const [fault, setFault] = useState<string | null>(null);
  const group = findGroup(groups, groups.chosen);
  if (!group) return null;

  const begin = async (): Promise<void> => {
    setFault(null);
    setIsWriting(true);
    try {
      // The grammar is loaded when the teacher first asks for a draft.
      const { beginDraft } = await import('./begin-draft.ts');
      const words = topic.toLowerCase().match(/[\p{L}'’-]+/gu) ?? [];
      const version = Math.floor(Math.random() * VERSIONS);
      const draft = await beginDraft(group, findSequence(sequences, group.sequence), words, version);
      if (!draft) return setFault(say('desk.tooLittleKnown', { group: group.name }));
      const unused = [...new Set(words)].filter((word) => !draft.used.includes(word));
      const says = [
        say('desk.isADraft', { count: draft.practised }),
        ...(unused.length > 0 ? [say('desk.wordsNotUsed', { words: sayList(unused) })] : []),
      ];
      await onBegun({ title: draft.title, text: draft.text }, says.join(' '));
      done();
    } catch (error) {
      setFault(say('desk.draftFailed', { why: error instanceof Error ? error.message : String(error) }));
    } finally {
      setIsWriting(false);
    }
  };
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
      <button type="button" class="plain" disabled={isWriting} onClick={() => void begin()}>
        {say('desk.beginAPassage')}
      </button>
      <div aria-live="polite">
        {isWriting && <p class="note">{say('desk.beginning')}</p>}
        {fault !== null && <p class="note note-wrong">{fault}</p>}
      </div>
    </section>
  );
}
