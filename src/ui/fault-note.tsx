import { useEffect, useState } from 'preact/hooks';
import './fault-note.css';
import { say } from '../wording/say.ts';

interface FaultNoteProps {
  readonly kind: new (...args: never[]) => Error;
  /**
   * Called for each fault, so that a page does not keep saying that it is opening. Must be the same function at every
   * call.
   */
  readonly onFault?: (isFault: true) => void;
}

/**
 * Shows the message of an error that occurred on this page, until the reader dismisses it. Only errors of the given
 * kind that no other code handled are shown.
 */
export function FaultNote({ kind, onFault }: FaultNoteProps) {
  const [says, setSays] = useState<string | null>(null);
  useEffect(() => {
    const listen = (event: PromiseRejectionEvent): void => {
      if (!(event.reason instanceof kind)) return;
      event.preventDefault();
      setSays(event.reason.message);
      onFault?.(true);
    };
    addEventListener('unhandledrejection', listen);
    return () => removeEventListener('unhandledrejection', listen);
  }, [kind, onFault]);
  return (
    <div role="alert" class={says === null ? 'unseen' : 'fault'}>
      {says !== null && (
        <>
          <p>{says}</p>
          <button type="button" class="plain" onClick={() => setSays(null)}>
            {say('ui.close')}
          </button>
        </>
      )}
    </div>
  );
}
