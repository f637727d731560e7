import { useId, useState } from 'preact/hooks';
import './file-drop.css';

interface FileDropProps {
  readonly label: string;
  /** Id of the heading the box belongs to. */
  readonly labelledBy: string;
  readonly describedBy?: string;
  /** The file extensions and types that may be chosen. */
  readonly accept: string;
  /** Whether several files may be chosen or dropped at a time. */
  readonly multiple?: boolean;
  /** Called for each file, one after the other. The callback must handle its own faults. */
  readonly onFile: (file: File) => Promise<void> | void;
}

/** A box for choosing files or dropping them. */
export function FileDrop({
  label,
  labelledBy,
  describedBy,
  accept,
  multiple = false,
  onFile,
}: FileDropProps) {
  const id = useId();
  const [over, setOver] = useState(false);
  const take = async (files: FileList | null | undefined): Promise<void> => {
    // The list is copied because the field loses its files when it is emptied.
    for (const file of [...(files ?? [])].slice(0, multiple ? undefined : 1)) await onFile(file);
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
        void take(event.dataTransfer?.files);
      }}
    >
      <label for={id}>{label}</label>
      <input
        id={id}
        type="file"
        accept={accept}
        multiple={multiple}
        aria-describedby={describedBy}
        onChange={(event) => {
          const field = event.currentTarget;
          void take(field.files).then(() => {
            field.value = '';
          });
        }}
      />
    </fieldset>
  );
}
