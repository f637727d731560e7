import { say } from '../wording/say.ts';

interface FoundAgainProps {
  readonly onKeep: () => void;
  readonly onForget: () => void;
}

/** A note that a field shows text typed before the browser closed, with buttons for the next step. */
export function FoundAgain({ onKeep, onForget }: FoundAgainProps) {
  return (
    <p class="quiet" role="status">
      {say('ui.foundAgain')}{' '}
      <button type="button" class="plain" onClick={onKeep}>
        {say('ui.keepFound')}
      </button>{' '}
      <button type="button" class="plain" onClick={onForget}>
        {say('ui.forgetFound')}
      </button>
    </p>
  );
}
