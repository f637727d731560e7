import { useId } from 'preact/hooks';
import { typedStore } from '../../host/store/typed-store.ts';
import { FoundAgain } from '../../ui/found-again.tsx';
import { useTyped } from '../../ui/use-typed.ts';

interface TextFieldProps {
  /** Whose field it is: typed text is noted under that name and its label. */
  readonly owner: string;
  readonly label: string;
  readonly value: string;
  /** Written large, as the head of a page. */
  readonly large?: boolean;
  /** Gives a promise where it takes a moment to keep. */
  readonly onChange: (value: string) => unknown;
}

/** One line of text, kept when the field is left or Enter is pressed; emptied, it goes back to what it was. */
export function TextField({ owner, label, value, large = false, onChange }: TextFieldProps) {
  const id = useId();
  const { typed, isFound, type, done } = useTyped(typedStore, `${owner} ${label}`);
  const keep = (): void => {
    const changed = typed?.trim().replace(/\s+/g, ' ');
    done(changed && changed !== value ? onChange(changed) : undefined);
  };
  return (
    <div class="picker">
      <label for={id}>{label}</label>
      <input
        id={id}
        type="text"
        class={large ? 'field field-large' : 'field'}
        value={typed ?? value}
        autocomplete="off"
        onInput={(event) => type(event.currentTarget.value)}
        onKeyDown={(event) => event.key === 'Enter' && event.currentTarget.blur()}
        onBlur={keep}
      />
      {isFound && <FoundAgain onKeep={keep} onForget={() => done()} />}
    </div>
  );
}
