import { findLongSentences } from '../../passage/find-sentences.ts';
import { say, sayWith } from '../../wording/say.ts';

const LENGTHS = [6, 8, 10, 12, 15, 20];

interface LongSentencesProps {
  readonly text: string;
  readonly longest: number | null;
  readonly onChange: (longest: number | null) => void;
}

/** Marks sentences that are longer than the teacher's limit. */
export function LongSentences({ text, longest, onChange }: LongSentencesProps) {
  const count =
    longest === null
      ? 0
      : text.split('\n').reduce((sum, line) => sum + findLongSentences(line, longest).length, 0);
  const choice = (
    <select
      id="longest"
      class="field field-short"
      value={String(longest ?? '')}
      onChange={({ currentTarget }) =>
        onChange(currentTarget.value === '' ? null : Number(currentTarget.value))
      }
    >
      <option value="">{say('desk.noLength')}</option>
      {LENGTHS.map((length) => (
        <option key={length} value={String(length)}>
          {say('desk.overWords', { count: length })}
        </option>
      ))}
    </select>
  );
  return (
    <p class="row">
      <label for="longest">{sayWith('desk.markSentencesOver', { length: choice })}</label>
      {longest !== null && (
        <span class="quiet" role="status">
          {count === 0 ? say('desk.noSentences') : say('desk.longSentences', { count })}
        </span>
      )}
    </p>
  );
}
