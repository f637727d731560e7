import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import type { PartMaker, PartPlan, PlannedPart } from '../../lesson/index.ts';
import { useRowDrag } from '../../ui/use-row-drag.ts';
import { say } from '../../wording/say.ts';
import { sayLabel } from './say-label.ts';

interface PartsListProps {
  readonly parts: readonly { readonly maker: PartMaker; readonly part: PlannedPart }[];
  readonly onChange: (maker: PartMaker, change: Partial<PartPlan>) => void;
  /** Moves a part by a number of places. */
  readonly onMove: (id: string, by: number) => void;
}

/**
 * Lists all parts that a lesson can have, in lesson order. Each part can be turned on or off, and moved by dragging, by
 * buttons or by Alt and an arrow key.
 */
export function PartsList({ parts, onChange, onMove }: PartsListProps) {
  const [says, setSays] = useState('');
  const list = useRef<HTMLOListElement>(null);
  const focus = useRef<{ readonly row: number; readonly on: string } | null>(null);
  useLayoutEffect(() => {
    if (!focus.current) return;
    const { row, on } = focus.current;
    focus.current = null;
    const found = list.current?.children[row];
    const button = found?.querySelector<HTMLButtonElement>(`[data-act="${on}"]:enabled`);
    (button ?? found?.querySelector<HTMLElement>('[data-act="on"]'))?.focus();
  }, [parts]);
  const move = (from: number, to: number, on = 'on'): void => {
    if (to < 0 || to >= parts.length || to === from) return;
    const { id, title } = parts[from]!.maker;
    focus.current = { row: to, on };
    setSays(say('lesson.partMoved', { part: sayLabel(title), place: to + 1 }));
    onMove(id, to - from);
  };
  const drag = useRowDrag(move);
  const minutes = parts.reduce((sum, { part }) => sum + (part.plan.out ? 0 : (part.plan.minutes ?? 0)), 0);
  return (
    <details class="lesson-parts">
      <summary>
        {say('lesson.parts')}
        {minutes > 0 && <span class="quiet"> · {say('lesson.minutesInAll', { count: minutes })}</span>}
      </summary>
      <p class="quiet">{say('lesson.partsHint')}</p>
      <ol ref={list}>
        {parts.map(({ maker, part }, i) => (
          <li key={maker.id} class={drag.dropClass(i)} {...drag.rowEvents(i)}>
            <span
              class="lesson-handle"
              draggable
              aria-hidden="true"
              {...drag.handleEvents(i, sayLabel(maker.title))}
            />
            <label class="lesson-switch">
              <input
                type="checkbox"
                data-act="on"
                checked={!part.plan.out}
                onChange={({ currentTarget }) => onChange(maker, { out: !currentTarget.checked })}
              />
              <span>
                {sayLabel(maker.title)}
                <span class="quiet lesson-use">{sayLabel(maker.use)}</span>
              </span>
            </label>
            <span class="lesson-moves">
              <button
                type="button"
                class="lesson-move"
                data-act="up"
                disabled={i === 0}
                aria-label={say('lesson.movePartUp', { part: sayLabel(maker.title) })}
                onClick={() => move(i, i - 1, 'up')}
              >
                ↑
              </button>
              <button
                type="button"
                class="lesson-move"
                data-act="down"
                disabled={i === parts.length - 1}
                aria-label={say('lesson.movePartDown', { part: sayLabel(maker.title) })}
                onClick={() => move(i, i + 1, 'down')}
              >
                ↓
              </button>
            </span>
          </li>
        ))}
      </ol>
      <p class="unseen" role="status">
        {says}
      </p>
    </details>
  );
}
