import { useState } from 'preact/hooks';
import type { Passage } from '../host/passages-store.ts';
import { sourceLine } from '../passage/source-line.ts';

interface SourceFieldsProps {
  readonly passage: Passage;
  readonly onChange: (fields: Partial<Pick<Passage, 'title' | 'source'>>) => void;
  readonly onDelete: () => void;
}

/** What a passage is called and where it comes from. */
export function SourceFields({ passage, onChange, onDelete }: SourceFieldsProps) {
  const { title, source } = passage;
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
    <>
      <div class="picker">
        <label for="title" class="unseen">
          Title
        </label>
        <input
          id="title"
          type="text"
          class="field field-large"
          value={title}
          onInput={(event) => onChange({ title: event.currentTarget.value })}
        />
      </div>
      <details class="unfold">
        <summary>{sourceLine(passage) ?? 'Say where it comes from'}</summary>
        <div class="desk-sources">
          {field('byline', 'By')}
          {field('url', 'Address')}
          {field('date', 'Date')}
        </div>
        {asking ? (
          <p class="row" role="alert">
            <span>Delete this passage and all its versions? It cannot be brought back.</span>
            <button type="button" class="plain" onClick={onDelete}>
              Delete it
            </button>
            <button type="button" class="plain" onClick={() => setAsking(false)}>
              Keep it
            </button>
          </p>
        ) : (
          <button type="button" class="plain" onClick={() => setAsking(true)}>
            Delete this passage
          </button>
        )}
      </details>
    </>
  );
}
