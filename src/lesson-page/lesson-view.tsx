import { useMemo } from 'preact/hooks';
import type { Passage } from '../host/passages-store.ts';
import { decide, makePart, parts, planOf, renew } from '../lesson/index.ts';
import { patternLabel } from '../marks/pattern-label.ts';
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
  const group = stored.groups.groups[groupId]!;
  return (
    <div class="sheet">
      <div class="part">
        <div class="lesson-bar">
          <label>
            <span class="quiet">For</span>{' '}
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
            <span class="quiet">around</span>{' '}
            <select
              class="field"
              value={passage?.id ?? ''}
              onChange={(event) => openLesson(groupId, event.currentTarget.value || null)}
            >
              <option value="">no passage</option>
              {stored.passages.map(({ id, title }) => (
                <option key={id} value={id}>
                  {title || 'Untitled'}
                </option>
              ))}
            </select>
          </label>
        </div>
        {input && (
          <p class="lesson-focus">
            {input.focus.length === 0
              ? 'Nothing was taught yet: choose a step for the group on the Groups page.'
              : `About ${list(input.focus.map(patternLabel))}.`}
          </p>
        )}
        {kept && input && (
          <>
            <div class="lesson-bar">
              <label>
                <span class="quiet">Sheet number</span>{' '}
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
                New sheet
              </button>
              {kept.undo && (
                <button type="button" class="plain" onClick={kept.undo}>
                  Undo
                </button>
              )}
            </div>
            <p class="quiet">
              The same number makes the same sheet. What you pin or write yourself stays when you make a new
              one.
            </p>
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
        made.map(({ maker, part }) => (
          <PartView
            key={maker.id}
            part={part}
            choices={maker.choices(input)}
            reads={input.known.reads}
            onChange={(change) => kept.change((now) => decide(now, maker.id, change))}
            onAgain={() =>
              kept.change((now) => decide(now, maker.id, { seed: planOf(now, maker.id).seed + 1 }))
            }
          />
        ))
      ) : (
        <p class="note">Choosing words…</p>
      )}
    </div>
  );
}

function list(items: readonly string[]): string {
  return new Intl.ListFormat('en').format(items);
}
