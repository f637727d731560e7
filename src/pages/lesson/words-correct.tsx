import { useState } from 'preact/hooks';
import { type LessonBlock, wordsCorrectAMinute } from '../../lesson/index.ts';
import { say } from '../../wording/say.ts';

/** Calculates the words read correctly per minute for one reading. Nothing is saved. */
export function WordsCorrect({ blocks }: { blocks: readonly LessonBlock[] }) {
  const counts =
    blocks.find(({ layout }) => layout === 'passage')?.rows.map(([, count]) => Number(count)) ?? [];
  const [words, setWords] = useState(Math.max(0, ...counts));
  const [errors, setErrors] = useState(0);
  const [seconds, setSeconds] = useState(60);
  const field = (label: string, value: number, onChange: (value: number) => void) => (
    <label>
      <span class="quiet">{label}</span>{' '}
      <input
        type="number"
        class="field lesson-number"
        min="0"
        value={value}
        onInput={({ currentTarget }) =>
          onChange(Number.isNaN(currentTarget.valueAsNumber) ? 0 : currentTarget.valueAsNumber)
        }
      />
    </label>
  );
  const correct = wordsCorrectAMinute(words, errors, seconds);
  return (
    <div class="lesson-choices">
      {field(say('lesson.wordsRead'), words, setWords)}
      {field(say('lesson.errors'), errors, setErrors)}
      {field(say('lesson.seconds'), seconds, setSeconds)}
      <output>
        {correct === null ? say('lesson.noWordsCorrect') : say('lesson.wordsCorrect', { count: correct })}
      </output>
    </div>
  );
}
