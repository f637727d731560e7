import { say } from '../wording/say.ts';
import { useEditLog } from './edit-log.ts';

/** The same at the foot of the window, over the page, so that nothing of the page moves. */
export function UndoBar() {
  return (
    <div class="undo-bar">
      <UndoLine />
    </div>
  );
}

/** The last change on this page, with a way to take it back. */
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
