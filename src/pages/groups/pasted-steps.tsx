import { useState } from 'preact/hooks';
import {
  choiceKey,
  type ImportedItem,
  type ImportedSequence,
  type ItemChoice,
  type ItemStatus,
} from '../../analyze/index.ts';
import { sayList } from '../../ui/say-list.ts';
import { say, sayWith } from '../../wording/say.ts';
import { pastedTitle } from './from-pasted.ts';
import { SettleItem } from './settle-item.tsx';
import { TaughtLine } from './taught-line.tsx';

interface PastedStepsProps {
  readonly imported: ImportedSequence;
  /** The same text as it is understood without the teacher’s choices. */
  readonly unaided: ImportedSequence;
  readonly choiceOf: (key: string) => ItemChoice | undefined;
  readonly onChoose: (key: string, choice: ItemChoice | null) => void;
}

/**
 * Lists every pasted piece, step by step, with its interpretation. Each piece can be opened and given another
 * interpretation. Pieces that are not used are hidden at first.
 */
export function PastedSteps({ imported, unaided, choiceOf, onChoose }: PastedStepsProps) {
  const [opened, setOpened] = useState<string | null>(null);
  const [all, setAll] = useState(false);
  const { steps } = imported;
  const items = steps.flatMap((step) => step.items);
  const count = (...wanted: ItemStatus[]): number =>
    items.filter(({ status }) => wanted.includes(status)).length;
  const notUsed = count('ignored');
  const parts = (
    [
      ['sequences.piecesUnderstood', count('matched', 'chosen')],
      ['sequences.piecesGuessed', count('guessed')],
      ['sequences.piecesNotUnderstood', count('unknown')],
      ['sequences.piecesLeftOut', notUsed],
    ] as const
  )
    .filter(([, n]) => n > 0)
    .map(([text, n]) => say(text, { count: n }));
  return (
    <>
      <p role="status">
        {say('sequences.figures', {
          steps: say('sequences.countSteps', { count: steps.length }),
          pieces: say('sequences.countPieces', { count: items.length }),
          parts: sayList(parts, 'figures'),
        })}
      </p>
      <ol class="pasted">
        {steps.map((step, i) => (
          <li key={i}>
            <h3>{pastedTitle(step, i)}</h3>
            <ul>
              {step.items.map((item, n) => {
                if (item.status === 'ignored' && !all) return null;
                const place = `${i} ${n}`;
                const isOpen = opened === place;
                const key = choiceKey(item.text);
                return (
                  <li key={n} class="pasted-item">
                    <button
                      type="button"
                      class={`piece piece-${item.status}`}
                      aria-expanded={isOpen}
                      lang="en"
                      title={say('sequences.sayWhatItTeaches')}
                      onClick={() => setOpened(isOpen ? null : place)}
                    >
                      {item.text}
                    </button>
                    <span class="quiet">
                      <Meaning {...item} />
                    </span>
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
      {notUsed > 0 && (
        <button type="button" class="plain" aria-expanded={all} onClick={() => setAll(!all)}>
          {all ? say('sequences.hideNotUsed') : say('sequences.showNotUsed', { count: notUsed })}
        </button>
      )}
    </>
  );
}

function Meaning({ status, patterns: teaches, bySight }: ImportedItem) {
  const meaning =
    teaches.length + bySight.length > 0 ? <TaughtLine teaches={teaches} bySight={bySight} /> : null;
  switch (status) {
    case 'matched':
      return meaning;
    case 'guessed':
      return meaning ? sayWith('sequences.guessOf', { meaning }) : say('sequences.guess');
    case 'chosen':
      return meaning ? sayWith('sequences.yourChoiceOf', { meaning }) : say('sequences.yourChoice');
    case 'unknown':
      return say('sequences.notUnderstood');
    case 'ignored':
      return say('sequences.leftOut');
  }
}
