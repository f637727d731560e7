import { useId, useState } from 'preact/hooks';
import type { PatternId } from '../../analyze/types.ts';
import { patternName } from '../../ui/pattern-name.ts';
import { say, sayWith } from '../../wording/say.ts';
import './pattern-picker.css';
import { searchPatterns } from './search-patterns.ts';

const SHOWN = 8;

interface PatternPickerProps {
  readonly label: string;
  /** The purpose of the list, in a sentence. */
  readonly hint?: string;
  readonly chosen: readonly PatternId[];
  /**
   * Returns a phrase that says where a pattern is already taught (`now in step 3`), or an empty text if no step teaches
   * the pattern.
   */
  readonly placeOf?: (id: PatternId) => string;
  readonly onAdd: (id: PatternId) => void;
  readonly onRemove: (id: PatternId) => void;
}

/** Shows the chosen patterns, each with a button to remove it, and a search to add more. Enter adds the first result. */
export function PatternPicker({ label, hint, chosen, placeOf, onAdd, onRemove }: PatternPickerProps) {
  const id = useId();
  const [typed, setTyped] = useState('');
  const found = typed.trim() === '' ? [] : searchPatterns(typed).filter((row) => !chosen.includes(row.id));
  const shown = found.slice(0, SHOWN);
  const add = (pattern: PatternId): void => {
    onAdd(pattern);
    setTyped('');
    document.getElementById(id)?.focus();
  };
  return (
    <div class="picker">
      <label for={id}>{label}</label>
      {hint && <p class="quiet">{hint}</p>}
      {chosen.length > 0 && (
        <ul class="chips">
          {chosen.map((pattern) => (
            <li key={pattern} class="chip">
              <span>{patternName(pattern)}</span>
              <button
                type="button"
                class="chip-out"
                aria-label={say('sequences.takeOut', { pattern: patternName(pattern) })}
                onClick={() => {
                  onRemove(pattern);
                  document.getElementById(id)?.focus();
                }}
              >
                ×
              </button>
            </li>
          ))}
        </ul>
      )}
      <input
        id={id}
        type="search"
        class="field"
        value={typed}
        placeholder={say('sequences.whatToType')}
        autocomplete="off"
        spellcheck={false}
        onInput={(event) => setTyped(event.currentTarget.value)}
        onKeyDown={(event) => {
          if (event.key === 'Enter' && shown[0]) {
            event.preventDefault();
            add(shown[0].id);
          }
          if (event.key === 'Escape' && typed !== '') {
            event.preventDefault();
            setTyped('');
          }
        }}
      />
      <p class="unseen" role="status">
        {typed.trim() !== '' && say('sequences.patternsFound', { count: found.length })}
      </p>
      {typed.trim() !== '' && found.length === 0 && (
        <p class="quiet">
          {sayWith('sequences.noPatternFits', {
            letters: english('ai'),
            word: english('rain'),
            family: english('digraph'),
          })}
        </p>
      )}
      {shown.length > 0 && (
        <ul class="found">
          {shown.map((row) => (
            <li key={row.id}>
              <button type="button" class="found-row" onClick={() => add(row.id)}>
                <span class="found-label">{patternName(row.id)}</span>{' '}
                <span class="quiet">
                  {english([row.examples.slice(0, 3).join(', '), row.family].filter(Boolean).join(' · '))}
                  {placeOf?.(row.id) && ` · ${placeOf(row.id)}`}
                </span>
              </button>
            </li>
          ))}
          {found.length > SHOWN && (
            <li class="quiet">{say('sequences.morePatterns', { count: found.length - SHOWN })}</li>
          )}
        </ul>
      )}
    </div>
  );
}

function english(text: string) {
  return <span lang="en">{text}</span>;
}
