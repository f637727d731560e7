import { useState } from 'preact/hooks';
import {
  choiceKey,
  type ImportedItem,
  type ImportedSequence,
  type ItemChoice,
  type ItemStatus,
} from '../analyze/index.ts';
import { patternLabel } from '../marks/pattern-label.ts';
import { SettleItem } from './settle-item.tsx';

const SAYS: Readonly<Record<ItemStatus, string>> = {
  matched: '',
  guessed: 'a guess',
  unknown: 'not understood',
  chosen: 'your choice',
  ignored: 'left out',
};

interface PastedStepsProps {
  readonly imported: ImportedSequence;
  /** The same text as it is understood without the teacher's choices. */
  readonly unaided: ImportedSequence;
  readonly choiceOf: (key: string) => ItemChoice | undefined;
  readonly onChoose: (key: string, choice: ItemChoice | null) => void;
}

/** Every pasted piece with what it was taken for, step by step; each can be opened and settled otherwise. */
export function PastedSteps({ imported, unaided, choiceOf, onChoose }: PastedStepsProps) {
  const [opened, setOpened] = useState<string | null>(null);
  const { steps } = imported;
  const items = steps.flatMap((step) => step.items);
  const count = (...wanted: ItemStatus[]): number =>
    items.filter(({ status }) => wanted.includes(status)).length;
  const parts = [
    [count('matched', 'chosen'), 'understood'],
    [count('guessed'), 'guessed'],
    [count('unknown'), 'not understood'],
    [count('ignored'), 'left out'],
  ] as const;
  return (
    <>
      <p role="status">
        {steps.length} {steps.length === 1 ? 'step' : 'steps'}; of {items.length}{' '}
        {items.length === 1 ? 'piece' : 'pieces'}{' '}
        {parts
          .filter(([n]) => n > 0)
          .map(([n, says]) => `${n} ${says}`)
          .join(', ')}
        .
      </p>
      <ol class="pasted">
        {steps.map(({ title, items }, i) => (
          <li key={i}>
            <h3>{title.trim() || `Step ${i + 1}`}</h3>
            <ul>
              {items.map((item, n) => {
                const place = `${i} ${n}`;
                const isOpen = opened === place;
                const key = choiceKey(item.text);
                return (
                  <li key={n} class="pasted-item">
                    <button
                      type="button"
                      class={`piece piece-${item.status}`}
                      aria-expanded={isOpen}
                      title="Say what this teaches"
                      onClick={() => setOpened(isOpen ? null : place)}
                    >
                      {item.text}
                    </button>
                    <span class="quiet">{describe(item)}</span>
                    {isOpen && (
                      <ul class="settle settle-here">
                        <SettleItem
                          item={unaided.steps[i]?.items[n] ?? item}
                          step={i}
                          choice={choiceOf(key)}
                          onChoose={(choice) => onChoose(key, choice)}
                        />
                      </ul>
                    )}
                  </li>
                );
              })}
            </ul>
          </li>
        ))}
      </ol>
    </>
  );
}

function describe({ status, patterns, bySight }: ImportedItem): string {
  const means = [...patterns.map(patternLabel), bySight.length > 0 && `by sight: ${bySight.join(', ')}`]
    .filter(Boolean)
    .join('; ');
  return [SAYS[status], means].filter(Boolean).join(': ');
}
