import { useEffect, useState } from 'preact/hooks';
import './fault-note.css';
import { say } from '../wording/say.ts';

interface FaultNoteProps {
  readonly kind: new (...args: never[]) => Error;
  /** Called each time, so that a page does not go on saying that it is opening; the same function at every call. */
  readonly onFault?: (isFault: true) => void;
}

/**
 * Says what went wrong with something done on this page: the message of any error of the given kind that nobody
 * else took care of, until it is put away.
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
