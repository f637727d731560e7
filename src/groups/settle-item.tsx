import type { ImportedItem, ItemChoice } from '../analyze/index.ts';
import { patternLabel } from '../marks/pattern-label.ts';
import { PatternPicker } from './pattern-picker.tsx';

interface SettleItemProps {
  /** As it was understood without the teacher. */
  readonly item: ImportedItem;
  readonly step: number;
  readonly choice: ItemChoice | undefined;
  readonly onChoose: (choice: ItemChoice | null) => void;
}

/** Lets the teacher say what a pasted piece means: patterns, by-sight words, or nothing to teach. */
export function SettleItem({ item, step, choice, onChoose }: SettleItemProps) {
  const { text, status, patterns, bySight } = item;
  const picked = typeof choice === 'object' ? choice : choice === undefined ? patterns : [];
  const guess = [...patterns.map(patternLabel), bySight.length > 0 && `by sight: ${bySight.join(', ')}`]
    .filter(Boolean)
    .join('; ');
  return (
    <li class="settle-item">
      <fieldset>
        <legend>
          <span class={`piece piece-${status}`}>{text}</span>{' '}
          <span class="quiet">
            step {step + 1} · {describe(status, guess, choice)}
          </span>
        </legend>
        <PatternPicker
          label="It teaches"
          chosen={picked}
          onAdd={(id) => onChoose([...picked, id])}
          onRemove={(id) => {
            const left = picked.filter((other) => other !== id);
            onChoose(left.length === 0 ? null : left);
          }}
        />
        <p class="row">
          {status === 'guessed' && choice === undefined && patterns.length > 0 && (
            <button type="button" class="plain" onClick={() => onChoose(patterns)}>
              The guess is right
            </button>
          )}
          <button
            type="button"
            class="plain"
            aria-pressed={choice === 'by-sight'}
            onClick={() => onChoose(choice === 'by-sight' ? null : 'by-sight')}
          >
            Words taught by sight
          </button>
          <button
            type="button"
            class="plain"
            aria-pressed={choice === 'ignore'}
            onClick={() => onChoose(choice === 'ignore' ? null : 'ignore')}
          >
            Nothing to teach
          </button>
          {choice !== undefined && (
            <button type="button" class="plain" onClick={() => onChoose(null)}>
              Take my choice back
            </button>
          )}
        </p>
      </fieldset>
    </li>
  );
}

function describe(status: ImportedItem['status'], guess: string, choice: ItemChoice | undefined): string {
  if (choice === 'by-sight') return 'your choice: by sight';
  if (choice === 'ignore') return 'your choice: nothing to teach';
  if (choice !== undefined) return 'your choice';
  if (status === 'unknown') return 'not understood';
  return [status === 'guessed' ? 'a guess' : '', guess || 'nothing to teach'].filter(Boolean).join(': ');
}
