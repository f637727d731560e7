import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import type { SequenceStep } from '../../analyze/types.ts';
import { useRowDrag } from '../../ui/use-row-drag.ts';
import { say } from '../../wording/say.ts';
import { type EditSteps, moveStep } from './edit-steps.ts';
import type { Oddity } from './find-oddities.ts';
import { StepEditor } from './step-editor.tsx';
import { StepRow } from './step-row.tsx';

interface StepListProps {
  readonly steps: readonly SequenceStep[];
  /** The title of the step at a place. */
  readonly titleAt: (place: number) => string;
  /** The language of the titles, if known. */
  readonly lang: 'en' | undefined;
  /** Returns the names of the groups that were last taught the step at a place. */
  readonly groupsAt: (place: number) => readonly string[];
  readonly oddities: readonly Oddity[];
  /** Whether each row shows what its step teaches. If false, each row shows the title alone. */
  readonly isFull: boolean;
  readonly onEdit: EditSteps;
}

/**
 * Lists the steps in order, with one step open at a time. When a step moves, the focus stays on the same control of
 * that step.
 */
export function StepList({ steps, titleAt, lang, groupsAt, oddities, isFull, onEdit }: StepListProps) {
  const [open, setOpen] = useState<number | null>(null);
  const list = useRef<HTMLOListElement>(null);
  const focus = useRef<{ readonly row: number; readonly on: string } | null>(null);

  useLayoutEffect(() => {
    if (!focus.current) return;
    const { row, on } = focus.current;
    focus.current = null;
    const found = list.current?.children[Math.min(row, steps.length - 1)];
    const button = found?.querySelector<HTMLButtonElement>(`[data-act="${on}"]:enabled`);
    (button ?? found?.querySelector<HTMLElement>('[data-act="open"]'))?.focus();
  }, [steps]);

  const move = (from: number, to: number, on = 'open'): void => {
    // While an earlier move is still being saved, this move would affect the wrong step.
    if (focus.current || to < 0 || to >= steps.length || to === from) return;
    focus.current = { row: to, on };
    setOpen((now) => (now === from ? to : null));
    const says = say('sequences.moved', { step: from + 1, place: to + 1 });
    onEdit(says, (all) => moveStep(all, from, to)).catch(() => {
      focus.current = null;
    });
  };
  const drag = useRowDrag(move);
  return (
    <ol class={isFull ? 'steps' : 'steps steps-short'} ref={list}>
      {steps.map((step, i) => (
        <li key={i} class={`step-row ${drag.dropClass(i)}`} {...drag.rowEvents(i)}>
          <StepRow
            step={step}
            title={titleAt(i)}
            lang={lang}
            number={i + 1}
            groups={groupsAt(i)}
            last={i === steps.length - 1}
            open={open === i}
            onToggle={() => setOpen(open === i ? null : i)}
            onMove={(by, on) => move(i, i + by, on)}
            drag={drag.handleEvents(i, titleAt(i))}
          />
          {oddities
            .filter((oddity) => oddity.step === i)
            .map(({ says }) => (
              <p key={says} class="odd">
                <strong>{say('sequences.oddMark')}</strong> {says}
              </p>
            ))}
          {open === i && (
            <StepEditor
              steps={steps}
              at={i}
              onEdit={onEdit}
              onShow={(row) => {
                focus.current = { row, on: 'open' };
                setOpen(row);
              }}
            />
          )}
        </li>
      ))}
    </ol>
  );
}
