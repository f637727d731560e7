import type { SequenceStep } from '../../analyze/types.ts';
import { patternNames } from '../../ui/pattern-names.ts';
import type { RowDrag } from '../../ui/use-row-drag.ts';
import { say } from '../../wording/say.ts';
import { TaughtLine } from './taught-line.tsx';

interface StepRowProps {
  readonly step: SequenceStep;
  /** As it is shown. */
  readonly title: string;
  /** The language of the title, if known. */
  readonly lang: 'en' | undefined;
  readonly number: number;
  /** The names of the groups that were last taught this step. */
  readonly groups: readonly string[];
  readonly last: boolean;
  readonly open: boolean;
  readonly onToggle: () => void;
  /** `on` names the button that was pressed. */
  readonly onMove: (by: -1 | 1, on: 'up' | 'down') => void;
  /** The event handlers of the step’s drag handle. */
  readonly drag: ReturnType<RowDrag['handleEvents']>;
}

/** Shows one step in brief: its title and contents, with buttons to open and move it. */
export function StepRow(props: StepRowProps) {
  const { step, title, lang, number, groups, last, open, onToggle, onMove, drag } = props;
  const patterns = patternNames(step.teaches);
  return (
    <div class="step-head">
      <span class="handle" draggable aria-hidden="true" {...drag} />
      <button type="button" class="step-open" data-act="open" aria-expanded={open} onClick={onToggle}>
        <span class="step-number">{number}</span>
        <span>
          <span class="step-name" lang={step.title ? lang : patterns ? 'en' : undefined}>
            {title}
          </span>
          {groups.map((group) => (
            <span key={group} class="step-group">
              {say('sequences.groupHere', { group })}
            </span>
          ))}
          <span class="quiet step-teaches">
            <TaughtLine teaches={step.title ? step.teaches : []} bySight={step.bySight} between=" · " />
          </span>
        </span>
      </button>
      <span class="step-moves">
        <button
          type="button"
          class="move"
          data-act="up"
          disabled={number === 1}
          aria-label={say('sequences.moveUp', { step: number })}
          onClick={() => onMove(-1, 'up')}
        >
          ↑
        </button>
        <button
          type="button"
          class="move"
          data-act="down"
          disabled={last}
          aria-label={say('sequences.moveDown', { step: number })}
          onClick={() => onMove(1, 'down')}
        >
          ↓
        </button>
      </span>
    </div>
  );
}
