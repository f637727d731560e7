import { say } from '../../wording/say.ts';
import type { Outcome, Pictures } from './use-pictures.ts';

/** Shows the progress of the reading, with a way to stop it, and afterwards its outcome. */
export function ReadingNote({ pictures }: { pictures: Pictures }) {
  const { progress, came, stop, again } = pictures;
  if (progress !== null)
    return (
      <div class="note">
        <label class="picture-progress">
          <span role="status">
            {say(progress.stage === 'loading' ? 'picture.starting' : 'picture.reading')}
          </span>
          <progress max={1} value={progress.stage === 'loading' ? 0 : progress.share} />
        </label>
        <button type="button" class="plain" onClick={stop}>
          {say('picture.stop')}
        </button>
      </div>
    );
  if (came === null) return null;
  return (
    <div class={came.kind === 'fault' ? 'note note-wrong' : 'note'} role="status">
      <p>{describe(came)}</p>
      {(came.kind === 'stopped' || came.kind === 'fault') && (
        <button type="button" class="plain" onClick={again}>
          {say('picture.again')}
        </button>
      )}
    </div>
  );
}

function describe(came: Outcome): string {
  return came.kind === 'fault' ? came.why : say(`picture.${came.kind}`);
}
