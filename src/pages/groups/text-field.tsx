import { useId } from 'preact/hooks';
import { typedStore } from '../../host/store/typed-store.ts';
import { FoundAgain } from '../../ui/found-again.tsx';
import { useTyped } from '../../ui/use-typed.ts';

interface TextFieldProps {
  /** The owner of the field. Typed text is stored under the owner and the label. */
  readonly owner: string;
  readonly label: string;
  readonly value: string;
  /** Shows the text in large type, as the heading of a page. */
  readonly large?: boolean;
  /** Returns a promise if saving takes a moment. */
  readonly onChange: (value: string) => unknown;
}

/**
 * A field for one line of text. The text is saved when the field loses focus or Enter is pressed. An empty field
 * returns to its earlier value.
 */
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
