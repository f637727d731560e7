import type { ImportedItem, ImportedSequence, ItemStatus } from '../analyze/index.ts';
import { patternLabel } from '../ui/pattern-label.ts';

const SAYS: Readonly<Record<ItemStatus, string>> = {
  matched: '',
  guessed: 'a guess',
  unknown: 'not understood',
  chosen: 'your choice',
  ignored: 'left out',
};

/** Every pasted piece with what it was taken for, step by step. */
export function PastedSteps({ imported }: { imported: ImportedSequence }) {
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
              {items.map((item, n) => (
                <li key={n} class="pasted-item">
                  <span class={`piece piece-${item.status}`}>{item.text}</span>
                  <span class="quiet">{describe(item)}</span>
                </li>
              ))}
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
