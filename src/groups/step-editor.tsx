import type { SequenceStep } from '../analyze/types.ts';
import { patternLabel } from '../marks/pattern-label.ts';
import {
  canSplit,
  changeStep,
  duplicateStep,
  type EditSteps,
  insertStep,
  mergeSteps,
  removeStep,
  splitStep,
  teachIn,
} from './edit-steps.ts';
import { PatternPicker } from './pattern-picker.tsx';
import { TextField } from './text-field.tsx';
import { WordsField } from './words-field.tsx';

interface StepEditorProps {
  readonly steps: readonly SequenceStep[];
  readonly at: number;
  readonly onEdit: EditSteps;
  /** Opens another step, when this one gives way to it. */
  readonly onShow: (row: number) => void;
}

/** Everything that can be changed in one step. */
export function StepEditor({ steps, at, onEdit, onShow }: StepEditorProps) {
  const step = steps[at]!;
  const number = at + 1;
  return (
    <div class="step-editor">
      <TextField
        label="Title"
        value={step.title ?? ''}
        onChange={(title) =>
          void onEdit(`Renamed step ${number}`, (all) => changeStep(all, at, (now) => ({ ...now, title })))
        }
      />
      <PatternPicker
        label="Teaches"
        hint="A pattern is taught in one step; one that is taught elsewhere moves here."
        chosen={step.teaches}
        placeOf={(id) => {
          const place = steps.findIndex(({ teaches }) => teaches.includes(id));
          return place < 0 ? 'never taught' : `now in step ${place + 1}`;
        }}
        onAdd={(id) =>
          void onEdit(`Added ${patternLabel(id)} to step ${number}`, (all) => teachIn(all, at, id))
        }
        onRemove={(id) =>
          void onEdit(`Took ${patternLabel(id)} out of step ${number}`, (all) =>
            changeStep(all, at, (now) => ({ ...now, teaches: now.teaches.filter((other) => other !== id) })),
          )
        }
      />
      <WordsField
        label="By-sight words"
        words={step.bySight}
        onChange={(bySight) =>
          void onEdit(`Changed the by-sight words of step ${number}`, (all) =>
            changeStep(all, at, (now) => ({ ...now, bySight })),
          )
        }
      />
      <p class="row">
        <button
          type="button"
          class="plain"
          onClick={() => {
            void onEdit('Added a step', (all) =>
              insertStep(all, at + 1, { title: 'New step', teaches: [], bySight: [] }),
            );
            onShow(at + 1);
          }}
        >
          Add a step after
        </button>
        <button
          type="button"
          class="plain"
          onClick={() => {
            void onEdit(`Duplicated step ${number}`, (all) => duplicateStep(all, at));
            onShow(at + 1);
          }}
        >
          Duplicate
        </button>
        {canSplit(step) && (
          <button
            type="button"
            class="plain"
            onClick={() => {
              void onEdit(`Split step ${number}`, (all) => splitStep(all, at));
              onShow(at);
            }}
          >
            Split in two
          </button>
        )}
        {at < steps.length - 1 && (
          <button
            type="button"
            class="plain"
            onClick={() => {
              void onEdit(`Merged steps ${number} and ${number + 1}`, (all) => mergeSteps(all, at));
              onShow(at);
            }}
          >
            Merge with the next
          </button>
        )}
        {steps.length > 1 && (
          <button
            type="button"
            class="plain"
            onClick={() => {
              void onEdit(`Deleted step ${number}`, (all) => removeStep(all, at));
              onShow(Math.min(at, steps.length - 2));
            }}
          >
            Delete step
          </button>
        )}
      </p>
    </div>
  );
}
