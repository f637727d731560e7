import type { ImportedItem, ItemChoice } from '../../analyze/index.ts';
import { say, sayWith } from '../../wording/say.ts';
import { PatternPicker } from './pattern-picker.tsx';
import { TaughtLine } from './taught-line.tsx';

interface SettleItemProps {
  /** The item as it was understood without the teacher’s choice. */
  readonly item: ImportedItem;
  readonly step: number;
  readonly choice: ItemChoice | undefined;
  readonly onChoose: (choice: ItemChoice | null) => void;
}

/** Lets the teacher say what a pasted piece means: patterns, by-sight words, or nothing to teach. */
export function SettleItem({ item, step, choice, onChoose }: SettleItemProps) {
  const { text, status, patterns } = item;
  const picked = typeof choice === 'object' ? choice : choice === undefined ? patterns : [];
  return (
    <li class="settle-item">
      <fieldset>
        <legend>
          <span class={`piece piece-${status}`} lang="en">
            {text}
          </span>{' '}
          <span class="quiet">
            {sayWith('sequences.stepAndMeaning', {
              step: step + 1,
              meaning: <Meaning item={item} choice={choice} />,
            })}
          </span>
        </legend>
        <PatternPicker
          label={say('sequences.itTeaches')}
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
              {say('sequences.guessIsRight')}
            </button>
          )}
          <button
            type="button"
            class="plain"
            aria-pressed={choice === 'by-sight'}
            onClick={() => onChoose(choice === 'by-sight' ? null : 'by-sight')}
          >
            {say('sequences.taughtBySight')}
          </button>
          <button
            type="button"
            class="plain"
            aria-pressed={choice === 'ignore'}
            onClick={() => onChoose(choice === 'ignore' ? null : 'ignore')}
          >
            {say('sequences.teachNothing')}
          </button>
          {choice !== undefined && (
            <button type="button" class="plain" onClick={() => onChoose(null)}>
              {say('sequences.takeChoiceBack')}
            </button>
          )}
        </p>
      </fieldset>
    </li>
  );
}

function Meaning({ item, choice }: Pick<SettleItemProps, 'item' | 'choice'>) {
  const { status, patterns: teaches, bySight } = item;
  if (choice === 'by-sight') return say('sequences.choseBySight');
  if (choice === 'ignore') return say('sequences.choseNothing');
  if (choice !== undefined) return say('sequences.yourChoice');
  if (status === 'unknown') return say('sequences.notUnderstood');
  const nothing = teaches.length + bySight.length === 0;
  const meaning = nothing ? (
    say('sequences.nothingToTeach')
  ) : (
    <TaughtLine teaches={teaches} bySight={bySight} />
  );
  return status === 'guessed' ? sayWith('sequences.guessOf', { meaning }) : meaning;
}
