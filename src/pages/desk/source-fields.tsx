import { useState } from 'preact/hooks';
import type { Passage } from '../../passage/kept/passage.ts';
import { nameSource } from '../../passage/source-line.ts';
import { say } from '../../wording/say.ts';

interface SourceFieldsProps {
  readonly passage: Passage;
  readonly onChange: (fields: Partial<Pick<Passage, 'title' | 'source'>>) => void;
  readonly onDelete: () => void;
}

/** The title of a passage. */
export function PassageTitle({ passage, onChange }: Omit<SourceFieldsProps, 'onDelete'>) {
  return (
    <div class="picker">
      <label for="title" class="unseen">
        {say('desk.titleOfPassage')}
      </label>
      <input
        id="title"
        type="text"
        class="field field-large"
        lang="en"
        value={passage.title}
        onInput={(event) => onChange({ title: event.currentTarget.value })}
      />
    </div>
  );
}

/** The fields for the source of a passage, and the way to delete the passage. */
export function SourceFields({ passage, onChange, onDelete }: SourceFieldsProps) {
  const { source } = passage;
  const known = nameSource(passage);
  const [asking, setAsking] = useState(false);
  const field = (key: keyof Passage['source'], label: string) => (
    <label class="desk-source">
      <span class="quiet">{label}</span>
      <input
        type="text"
        class="field"
        value={source[key] ?? ''}
        onInput={(event) =>
          onChange({ source: { ...source, [key]: event.currentTarget.value.trim() || null } })
        }
      />
    </label>
  );
  return (
    <details class="unfold">
      <summary>{known === null ? say('desk.noSource') : say('passage.source', { source: known })}</summary>
      <div class="desk-sources">
        {field('byline', say('desk.byline'))}
        {field('url', say('desk.address'))}
        {field('date', say('desk.date'))}
      </div>
      {asking ? (
        <p class="row" role="alert">
          <span>{say('desk.reallyDelete')}</span>
          <button type="button" class="plain" onClick={onDelete}>
            {say('desk.deleteIt')}
          </button>
          <button type="button" class="plain" onClick={() => setAsking(false)}>
            {say('desk.keepIt')}
          </button>
        </p>
      ) : (
        <button type="button" class="plain" onClick={() => setAsking(true)}>
          {say('desk.deletePassage')}
        </button>
      )}
    </details>
  );
}
