import type { ComponentChildren } from 'preact';
import { useId } from 'preact/hooks';
import { typedStore } from '../../host/store/typed-store.ts';
import { FoundAgain } from '../../ui/found-again.tsx';
import { useTyped } from '../../ui/use-typed.ts';

interface WordsFieldProps {
  /** The owner of the field. Typed text is stored under the owner and the label. */
  readonly owner: string;
  readonly label: string;
  readonly hint?: ComponentChildren;
  /** True for English words to be read, false for names. */
  readonly english?: boolean;
  readonly words: readonly string[];
  /** Returns a promise if saving takes a moment. */
  readonly onChange: (words: readonly string[]) => unknown;
}

/**
 * A field for a list of words as running text, saved when the field loses focus. Anything between the words separates
 * them.
 */
export function WordsField({ owner, label, hint, english = false, words, onChange }: WordsFieldProps) {
  const id = useId();
  const { typed, isFound, type, done } = useTyped(typedStore, `${owner} ${label}`);
  const keep = (): void => {
    if (typed === null) return;
    const changed = splitWords(typed);
    done(changed.join(' ') === words.join(' ') ? undefined : onChange(changed));
  };
  return (
    <div class="picker">
      <label for={id}>{label}</label>
      {hint && (
        <p class="quiet" id={`${id}-hint`}>
          {hint}
        </p>
      )}
      <textarea
        id={id}
        class="field"
        rows={2}
        spellcheck={false}
        lang={english ? 'en' : undefined}
        aria-describedby={hint ? `${id}-hint` : undefined}
        value={typed ?? words.join(', ')}
        onInput={(event) => type(event.currentTarget.value)}
        onBlur={keep}
      />
      {isFound && <FoundAgain onKeep={keep} onForget={() => done()} />}
    </div>
  );
}

/**
 * Returns the words of a text in order, each once. A word is a run of letters with inner apostrophes and hyphens
 * (`don't`). Capitals are kept.
 */
export function splitWords(typed: string): string[] {
  const words =
    typed
      .normalize('NFC')
      .replace(/[‘’ʼ]/g, "'")
      .match(/\p{L}+(?:['-]\p{L}+)*/gu) ?? [];
  return [...new Set(words)];
}
