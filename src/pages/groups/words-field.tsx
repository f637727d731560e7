import type { ComponentChildren } from 'preact';
import { useId } from 'preact/hooks';
import { typedStore } from '../../host/store/typed-store.ts';
import { FoundAgain } from '../../ui/found-again.tsx';
import { useTyped } from '../../ui/use-typed.ts';

interface WordsFieldProps {
  /** Whose field it is: typed text is noted under that name and its label. */
  readonly owner: string;
  readonly label: string;
  readonly hint?: ComponentChildren;
  /** Whether they are words to read in English, not names. */
  readonly english?: boolean;
  readonly words: readonly string[];
  /** Gives a promise where it takes a moment to keep. */
  readonly onChange: (words: readonly string[]) => unknown;
}

/** A list of words as running text, kept when the field is left: anything between the words parts them. */
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

/** The words in a text, each once, in order: letters with inner apostrophes and hyphens (`don't`), capitals kept. */
export function splitWords(typed: string): string[] {
  const words =
    typed
      .normalize('NFC')
      .replace(/[‘’ʼ]/g, "'")
      .match(/\p{L}+(?:['-]\p{L}+)*/gu) ?? [];
  return [...new Set(words)];
}
