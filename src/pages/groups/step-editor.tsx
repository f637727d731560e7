import type { SequenceStep } from '../../analyze/types.ts';
import { patternName } from '../../ui/pattern-name.ts';
import { say } from '../../wording/say.ts';
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
  /** Opens another step in place of this one. */
  readonly onShow: (row: number) => void;
}

/** Everything that can be changed in one step. */
export function StepEditor({ steps, at, onEdit, onShow }: StepEditorProps) {
  const edited = steps[at]!;
  const step = at + 1;
  // The address contains the id of the sequence.
  const owner = `${location.hash} ${step}`;
  return (
    <div class="step-editor">
      <TextField
        owner={owner}
        label={say('sequences.titleOfStep')}
        value={edited.title ?? ''}
        onChange={(title) =>
          onEdit(say('sequences.renamedStep', { step }), (all) =>
            changeStep(all, at, (now) => ({ ...now, title })),
          )
        }
      />
      <PatternPicker
        label={say('sequences.teaches')}
        hint={say('sequences.aboutTeaches')}
        chosen={edited.teaches}
        placeOf={(id) => {
          const place = steps.findIndex(({ teaches }) => teaches.includes(id));
          return place < 0 ? say('sequences.neverTaught') : say('sequences.nowInStep', { step: place + 1 });
        }}
        onAdd={(id) =>
          void onEdit(say('sequences.addedPattern', { pattern: patternName(id), step }), (all) =>
            teachIn(all, at, id),
          )
        }
        onRemove={(id) =>
          void onEdit(say('sequences.tookPatternOut', { pattern: patternName(id), step }), (all) =>
            changeStep(all, at, (now) => ({ ...now, teaches: now.teaches.filter((other) => other !== id) })),
          )
        }
      />
      <WordsField
        owner={owner}
        english
        label={say('sequences.bySightWords')}
        words={edited.bySight}
        onChange={(bySight) =>
          onEdit(say('sequences.changedBySight', { step }), (all) =>
            changeStep(all, at, (now) => ({ ...now, bySight })),
          )
        }
      />
      <p class="row">
        <button
          type="button"
          class="plain"
          onClick={() => {
            void onEdit(say('sequences.addedStep'), (all) =>
              insertStep(all, at + 1, { title: say('sequences.newStep'), teaches: [], bySight: [] }),
            );
            onShow(at + 1);
          }}
        >
          {say('sequences.addAfter')}
        </button>
        <button
          type="button"
          class="plain"
          onClick={() => {
            void onEdit(say('sequences.duplicated', { step }), (all) => duplicateStep(all, at));
            onShow(at + 1);
          }}
        >
          {say('sequences.duplicate')}
        </button>
        {canSplit(edited) && (
          <button
            type="button"
            class="plain"
            onClick={() => {
              void onEdit(say('sequences.splitStep', { step }), (all) => splitStep(all, at));
              onShow(at);
            }}
          >
            {say('sequences.split')}
          </button>
        )}
        {at < steps.length - 1 && (
          <button
            type="button"
            class="plain"
            onClick={() => {
              void onEdit(say('sequences.merged', { step, next: step + 1 }), (all) => mergeSteps(all, at));
              onShow(at);
            }}
          >
            {say('sequences.mergeWithNext')}
          </button>
        )}
        {steps.length > 1 && (
          <button
            type="button"
            class="plain"
            onClick={() => {
              void onEdit(say('sequences.deletedStep', { step }), (all) => removeStep(all, at));
              onShow(Math.min(at, steps.length - 2));
            }}
          >
            {say('sequences.deleteStep')}
          </button>
        )}
      </p>
    </div>
  );
}
