import { useState } from 'preact/hooks';
import './file-drop.css';

interface FileDropProps {
  readonly label: string;
  /** Id of the heading the box belongs to. */
  readonly labelledBy: string;
  readonly describedBy?: string;
  /** Endings and types of the files that are meant. */
  readonly accept: string;
  /** Takes care of its own faults. */
  readonly onFile: (file: File) => Promise<void>;
}

/** A box to choose a file in, or to drop one on. */
export function FileDrop({ label, labelledBy, describedBy, accept, onFile }: FileDropProps) {
  const [over, setOver] = useState(false);
  const take = async (file: File | undefined): Promise<void> => {
    if (file) await onFile(file);
  };
  return (
    <fieldset
      aria-labelledby={labelledBy}
      class={over ? 'drop drop-over' : 'drop'}
      onDragOver={(event) => {
        event.preventDefault();
        setOver(true);
      }}
      onDragLeave={() => setOver(false)}
      onDrop={(event) => {
        event.preventDefault();
        setOver(false);
        void take(event.dataTransfer?.files[0]);
      }}
    >
      <label for="file">{label}</label>
      <input
        id="file"
        type="file"
        accept={accept}
        aria-describedby={describedBy}
        onChange={(event) => {
          const field = event.currentTarget;
          void take(field.files?.[0]).then(() => {
            field.value = '';
          });
        }}
      />
    </fieldset>
  );
}
