import { say } from '../wording/say.ts';
import { useEditLog } from './edit-log.ts';

/** The undo line at the foot of the window, over the page, so that nothing on the page moves. */
export function UndoBar() {
  return (
    <div class="undo-bar">
      <UndoLine />
    </div>
  );
}

/** The last change on this page, with a button to undo it. */
export function UndoLine() {
  const { last, undo } = useEditLog();
  return (
    <p class="undo-line" role="status">
      {last && (
        <>
          <span>{last.says}</span>{' '}
          <button
            type="button"
            class="plain"
            onClick={() => {
              document.querySelector('main')?.focus();
              void undo();
            }}
          >
            {say('ui.undo')}
          </button>
        </>
      )}
    </p>
  );
}
