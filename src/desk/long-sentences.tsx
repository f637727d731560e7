import { findLongSentences } from '../passage/find-sentences.ts';

const LENGTHS = [6, 8, 10, 12, 15, 20];

interface LongSentencesProps {
  readonly text: string;
  readonly longest: number | null;
  readonly onChange: (longest: number | null) => void;
}

/** Marks sentences over a length the teacher sets. */
export function LongSentences({ text, longest, onChange }: LongSentencesProps) {
  const count =
    longest === null
      ? 0
      : text.split('\n').reduce((sum, line) => sum + findLongSentences(line, longest).length, 0);
  return (
    <p class="row">
      <label>
        Mark sentences over{' '}
        <select
          class="field field-short"
          value={String(longest ?? '')}
          onChange={({ currentTarget }) =>
            onChange(currentTarget.value === '' ? null : Number(currentTarget.value))
          }
        >
          <option value="">no length</option>
          {LENGTHS.map((length) => (
            <option key={length} value={String(length)}>
              {length} words
            </option>
          ))}
        </select>
      </label>
      {longest !== null && (
        <span class="quiet" role="status">
          {count === 0 ? 'none' : count === 1 ? 'one sentence' : `${count} sentences`}
        </span>
      )}
    </p>
  );
}
