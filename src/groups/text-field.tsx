import { useId, useState } from 'preact/hooks';

interface TextFieldProps {
  readonly label: string;
  readonly value: string;
  /** Written large, as the head of a page. */
  readonly large?: boolean;
  readonly onChange: (value: string) => void;
}

/** One line of text, kept when the field is left or Enter is pressed; emptied, it goes back to what it was. */
export function TextField({ label, value, large = false, onChange }: TextFieldProps) {
  const id = useId();
  const [typed, setTyped] = useState<string | null>(null);
  return (
    <div class="picker">
      <label for={id}>{label}</label>
      <input
        id={id}
        type="text"
        class={large ? 'field field-large' : 'field'}
        value={typed ?? value}
        autocomplete="off"
        onInput={(event) => setTyped(event.currentTarget.value)}
        onKeyDown={(event) => event.key === 'Enter' && event.currentTarget.blur()}
        onBlur={() => {
          const changed = typed?.trim().replace(/\s+/g, ' ');
          setTyped(null);
          if (changed && changed !== value) onChange(changed);
        }}
      />
    </div>
  );
}
