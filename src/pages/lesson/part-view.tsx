import { useId, useState } from 'preact/hooks';
import type { LessonBlock, PartChoice, PartPlan, PlannedPart } from '../../lesson/index.ts';
import { say } from '../../wording/say.ts';
import { BlockEditor } from './block-editor.tsx';
import { BlockView } from './block-view.tsx';
import { sayLabel } from './say-label.ts';
import { WordsCorrect } from './words-correct.tsx';

interface PartViewProps {
  readonly part: PlannedPart;
  readonly choices: readonly PartChoice[];
  readonly reads: (text: string) => boolean;
  readonly onChange: (change: Partial<PartPlan>) => void;
  readonly onAgain: () => void;
}

/** One part of the lesson with its controls: shuffle, choose, edit, pin, leave out. */
export function PartView({ part, choices, reads, onChange, onAgain }: PartViewProps) {
  const { title, plan, blocks, says } = part;
  const [writing, setWriting] = useState(false);
  const id = useId();
  const isPinned = plan.pinned !== null;
  const short = isPinned ? [] : fewerThanAsked(part, choices);
  const edit = (at: number, block: LessonBlock | null): void =>
    onChange({ pinned: block ? blocks.with(at, block) : blocks.toSpliced(at, 1) });
  return (
    <section class="lesson-part" aria-labelledby={id}>
      <div class="lesson-head">
        <h2 id={id}>{sayLabel(title)}</h2>
        {plan.minutes !== undefined && !plan.out && (
          <span class="quiet">{say('lesson.minutes', { count: plan.minutes })}</span>
        )}
        <div class="row">
          {!plan.out && (
            <>
              {!isPinned && (
                <button type="button" class="plain" onClick={onAgain} aria-describedby={id}>
                  {say('lesson.makeAgain')}
                </button>
              )}
              {blocks.length > 0 && (
                <>
                  <button
                    type="button"
                    class="plain"
                    aria-pressed={writing}
                    aria-describedby={id}
                    onClick={() => setWriting(!writing)}
                  >
                    {writing ? say('lesson.done') : say('lesson.edit')}
                  </button>
                  <button
                    type="button"
                    class="plain"
                    aria-pressed={isPinned}
                    aria-describedby={id}
                    onClick={() => {
                      setWriting(false);
                      onChange({ pinned: isPinned ? null : blocks });
                    }}
                  >
                    {isPinned ? say('lesson.unpin') : say('lesson.pin')}
                  </button>
                </>
              )}
            </>
          )}
          <button
            type="button"
            class="plain"
            aria-describedby={id}
            onClick={() => {
              setWriting(false);
              onChange({ out: !plan.out });
            }}
          >
            {plan.out ? say('lesson.putBack') : say('lesson.leaveOut')}
          </button>
        </div>
      </div>
      {plan.out ? (
        <p class="quiet">{say('lesson.leftOut')}</p>
      ) : (
        <>
          {!isPinned && choices.length > 0 && (
            <div class="lesson-choices">
              {choices.map((choice) => (
                <label key={choice.id}>
                  <span class="quiet">{sayLabel(choice.label)}</span>{' '}
                  <select
                    class="field"
                    value={plan.chosen[choice.id] ?? choice.usual}
                    onChange={(event) =>
                      onChange({ chosen: { ...plan.chosen, [choice.id]: event.currentTarget.value } })
                    }
                  >
                    {choice.options.map(({ value, label }) => (
                      <option key={value} value={value}>
                        {sayLabel(label)}
                      </option>
                    ))}
                  </select>
                </label>
              ))}
            </div>
          )}
          {says && <p class="lesson-says">{sayLabel(says)}</p>}
          {short.length > 0 && !says && (
            <p class="quiet lesson-fewer">{say('lesson.fewer', { what: short.join('; ') })}</p>
          )}
          {part.id === 'read-it' && blocks.length > 0 && <WordsCorrect blocks={blocks} />}
          <div class={writing ? 'lesson-writing' : 'lesson-blocks'}>
            {blocks.map((block, i) =>
              writing ? (
                <BlockEditor
                  key={block.id}
                  block={block}
                  reads={reads}
                  onChange={(changed) => edit(i, changed)}
                />
              ) : (
                <BlockView key={block.id} block={block} />
              ),
            )}
          </div>
        </>
      )}
    </section>
  );
}

/** Returns messages such as `Words in a chain: 4 of 6`, one for each chosen number that could not be reached. */
function fewerThanAsked({ made = {}, plan }: PlannedPart, choices: readonly PartChoice[]): string[] {
  return choices.flatMap(({ id, label, usual }) => {
    const asked = Number(plan.chosen[id] ?? usual);
    const count = made[id];
    return count === undefined || !(count < asked)
      ? []
      : [say('lesson.fewerOf', { what: sayLabel(label), made: count, asked })];
  });
}
