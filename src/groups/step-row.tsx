import type { SequenceStep } from '../analyze/types.ts';
import { patternLabel } from '../marks/pattern-label.ts';

interface StepRowProps {
  readonly step: SequenceStep;
  readonly number: number;
  readonly last: boolean;
  readonly open: boolean;
  readonly onToggle: () => void;
  /** `on` is the button that was pressed. */
  readonly onMove: (by: -1 | 1, on: 'up' | 'down') => void;
  readonly onDrag: (active: boolean) => void;
}

/** One step at a glance: its title and what it teaches, with buttons to open and move it. */
export function StepRow({ step, number, last, open, onToggle, onMove, onDrag }: StepRowProps) {
  const patterns = step.teaches.map(patternLabel).join('; ');
  const title = step.title ?? (patterns || 'Without a title');
  return (
    <div class="step-head">
      <span
        class="handle"
        draggable
        aria-hidden="true"
        onDragStart={(event) => {
          const row = event.currentTarget.closest('li');
          if (row) event.dataTransfer?.setDragImage(row, 12, 12);
          event.dataTransfer?.setData('text/plain', title);
          onDrag(true);
        }}
        onDragEnd={() => onDrag(false)}
      />
      <button type="button" class="step-open" data-act="open" aria-expanded={open} onClick={onToggle}>
        <span class="step-number">{number}</span>
        <span>
          <span class="step-name">{title}</span>
          <span class="quiet step-teaches">
            {[step.title && patterns, step.bySight.length > 0 && `by sight: ${step.bySight.join(', ')}`]
              .filter(Boolean)
              .join(' · ')}
          </span>
        </span>
      </button>
      <span class="step-moves">
        <button
          type="button"
          class="move"
          data-act="up"
          disabled={number === 1}
          aria-label={`Move step ${number} up`}
          onClick={() => onMove(-1, 'up')}
        >
          ↑
        </button>
        <button
          type="button"
          class="move"
          data-act="down"
          disabled={last}
          aria-label={`Move step ${number} down`}
          onClick={() => onMove(1, 'down')}
        >
          ↓
        </button>
      </span>
    </div>
  );
}
