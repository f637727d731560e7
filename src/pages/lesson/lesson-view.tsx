import { useMemo } from 'preact/hooks';
import type { Passage } from '../../host/store/passages-store.ts';
import { decide, makePart, parts, planOf, renew } from '../../lesson/index.ts';
import { patternName } from '../../ui/pattern-name.ts';
import { sayList } from '../../ui/say-list.ts';
import { say } from '../../wording/say.ts';
import { openLesson } from './lesson-address.ts';
import { LessonOut } from './out/lesson-out.tsx';
import { PartView } from './part-view.tsx';
import { type LessonShelf, type LessonTools, useLessonInput } from './use-lesson.ts';
import { anyNumber, usePlan } from './use-plan.ts';

interface LessonViewProps {
  readonly stored: LessonShelf;
  readonly tools: LessonTools | null;
  readonly groupId: string;
  readonly passage: Passage | null;
}

/** One lesson: what it is for, and its parts. */
export function LessonView({ stored, tools, groupId, passage }: LessonViewProps) {
  const kept = usePlan({ group: groupId, passage: passage?.id ?? null });
  const input = useLessonInput(tools, stored, groupId, passage);
  const plan = kept?.plan;
  const made = useMemo(
    () => (plan && input ? parts.map((maker) => ({ maker, part: makePart(maker, plan, input) })) : []),
    [plan, input],
  );
  // What can be chosen goes by the group alone, and takes as long to find as a lesson to make.
  const choices = useMemo(() => (input ? parts.map((maker) => maker.choices(input)) : []), [input]);
  const group = stored.groups.groups[groupId]!;
  return (
    <div class="sheet">
      <div class="part">
        <div class="lesson-bar">
          <label>
            <span class="quiet">{say('lesson.for')}</span>{' '}
            <select
              class="field"
              value={groupId}
              onChange={(event) => openLesson(event.currentTarget.value, passage?.id ?? null)}
            >
              {Object.entries(stored.groups.groups).map(([id, { name }]) => (
                <option key={id} value={id}>
                  {name}
                </option>
              ))}
            </select>
          </label>
          <label>
            <span class="quiet">{say('lesson.around')}</span>{' '}
            <select
              class="field"
              value={passage?.id ?? ''}
              onChange={(event) => openLesson(groupId, event.currentTarget.value || null)}
            >
              <option value="">{say('lesson.noPassage')}</option>
              {stored.passages.map(({ id, title }) => (
                <option key={id} value={id}>
                  {title || say('lesson.untitled')}
                </option>
              ))}
            </select>
          </label>
        </div>
        {input && (
          <p class="lesson-focus">
            {input.focus.length === 0
              ? say('lesson.nothingTaught')
              : say('lesson.about', { patterns: sayList(input.focus.map(patternName)) })}
          </p>
        )}
        {kept && input && (
          <>
            <div class="lesson-bar">
              <label>
                <span class="quiet">{say('lesson.sheetNumber')}</span>{' '}
                <input
                  type="number"
                  class="field lesson-number"
                  min="1"
                  value={kept.plan.seed}
                  onChange={(event) => {
                    const seed = event.currentTarget.valueAsNumber;
                    if (Number.isSafeInteger(seed)) kept.change((now) => renew(now, seed));
                  }}
                />
              </label>
              <button
                type="button"
                class="action"
                onClick={() => kept.change((now) => renew(now, anyNumber()))}
              >
                {say('lesson.newSheet')}
              </button>
              {kept.undo && (
                <button type="button" class="plain" onClick={kept.undo}>
                  {say('lesson.undo')}
                </button>
              )}
            </div>
            <p class="quiet">{say('lesson.numberHint')}</p>
            <LessonOut
              parts={made.map(({ part }) => part)}
              title={passage?.title ?? ''}
              group={group}
              passage={passage}
            />
          </>
        )}
      </div>
      {kept && input ? (
        made.map(({ maker, part }, i) => (
          <PartView
            key={maker.id}
            part={part}
            choices={choices[i]!}
            reads={input.known.reads}
            onChange={(change) => kept.change((now) => decide(now, maker.id, change))}
            onAgain={() =>
              kept.change((now) => decide(now, maker.id, { seed: planOf(now, maker.id).seed + 1 }))
            }
          />
        ))
      ) : (
        <p class="note">{say('lesson.choosing')}</p>
      )}
    </div>
  );
}
