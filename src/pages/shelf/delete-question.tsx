import { useEffect, useRef } from 'preact/hooks';
import { say } from '../../wording/say.ts';

interface DeleteQuestionProps {
  readonly says: string;
  readonly onDelete: () => void;
  readonly onKeep: () => void;
}

/** Asks before something is deleted. The focus is on the button that keeps it. */
export function DeleteQuestion({ says, onDelete, onKeep }: DeleteQuestionProps) {
  const keep = useRef<HTMLButtonElement>(null);
  useEffect(() => keep.current?.focus(), []);
  return (
    <p class="row" role="alert">
      <span>{says}</span>
      <button type="button" class="plain" onClick={onDelete}>
        {say('shelf.delete')}
      </button>
      <button ref={keep} type="button" class="plain" onClick={onKeep}>
        {say('shelf.keep')}
      </button>
    </p>
  );
}
