import { useMemo } from 'preact/hooks';
import { noteSheet } from '../../host/store/earlier-sheets-store.ts';
import {
  applyPreset,
  decide,
  type EarlierSheet,
  inOrder,
  type LessonInput,
  makeSheet,
  movePart,
  type PartChoice,
  type PartMaker,
  parts,
  planOf,
  presetOf,
  renew,
  wordsOnSheet,
} from '../../lesson/index.ts';
import type { Passage } from '../../passage/kept/passage.ts';
import { patternName } from '../../ui/pattern-name.ts';
import { sayList } from '../../ui/say-list.ts';
import { say } from '../../wording/say.ts';
import { openLesson } from './lesson-address.ts';
import { LessonOut } from './out/lesson-out.tsx';
import { PartView } from './part-view.tsx';
import { PartsList } from './parts-list.tsx';
import { PresetsBar } from './presets-bar.tsx';
import { type LessonShelf, type LessonTools, useLessonInput } from './use-lesson.ts';
import { anyNumber, usePlan } from './use-plan.ts';

interface LessonViewProps {
  readonly stored: LessonShelf;
  readonly tools: LessonTools | null;
  readonly groupId: string;
  readonly passage: Passage | null;
}

/** Returns the words and patterns on the sheet, so that later sheets can bring them back. */
function sheetOf(made: ReturnType<typeof makeSheet>, { day, focus, judge }: LessonInput): EarlierSheet {
  const words = wordsOnSheet(made.map(({ part }) => part).filter(({ plan }) => !plan.out));
  const isBySight = (word: string): boolean => judge(word).standing === 'by-sight';
  return {
    day,
    patterns: focus,
    words: words.filter((word) => !isBySight(word)),
    bySight: words.filter(isBySight),
  };
}

/** Shows one lesson: its settings and its parts. */
export function LessonView({ stored, tools, groupId, passage }: LessonViewProps) {
  const kept = usePlan({ group: groupId, passage: passage?.id ?? null });
  const input = useLessonInput(tools, stored, groupId, passage);
  const plan = kept?.plan;
  const made = useMemo(() => (plan && input ? makeSheet(parts, plan, input) : []), [plan, input]);
  // The choices depend on the group and the passage, not on the plan, and finding them takes as long as making a
  // lesson.
  const choices = useMemo(() => {
    const found = new Map<string, readonly PartChoice[]>();
    return (maker: PartMaker): readonly PartChoice[] => {
      if (!input) return [];
      const known = found.get(maker.id) ?? maker.choices(input);
      found.set(maker.id, known);
      return known;
    };
  }, [input]);
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
                  {say('ui.undo')}
                </button>
              )}
            </div>
            <p class="quiet">{say('lesson.numberHint')}</p>
            <PresetsBar
              onUse={(preset) => kept.change((now) => applyPreset(now, preset, parts))}
              presetNow={(name) => presetOf(kept.plan, name, inOrder(kept.plan, parts))}
            />
            <PartsList
              parts={made}
              onChange={(maker, change) => kept.change((now) => decide(now, maker, change))}
              onMove={(id, by) => kept.change((now) => movePart(now, parts, id, by))}
            />
            <LessonOut
              parts={made.map(({ part }) => part)}
              title={passage?.title ?? ''}
              group={group}
              passage={passage}
              onOut={() => void noteSheet(groupId, sheetOf(made, input))}
            />
          </>
        )}
      </div>
      {kept && input ? (
        made
          // An extra part that nobody has put on the sheet is shown only in the list above.
          .filter(
            ({ maker, part }) => !part.plan.out || !maker.extra || Object.hasOwn(kept.plan.parts, maker.id),
          )
          .map(({ maker, part }) => (
            <PartView
              key={maker.id}
              part={part}
              choices={part.plan.out ? [] : choices(maker)}
              reads={input.known.reads}
              onChange={(change) => kept.change((now) => decide(now, maker, change))}
              onAgain={() => kept.change((now) => decide(now, maker, { seed: planOf(now, maker).seed + 1 }))}
            />
          ))
      ) : (
        <p class="note">{say('lesson.choosing')}</p>
      )}
    </div>
  );
}
