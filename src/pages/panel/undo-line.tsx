import { useEditLog } from '../../ui/edit-log.ts';
import { say } from '../../wording/say.ts';

/** What was changed last in the panel, with a way to take it back; its place is kept, so that no button moves. */
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
            {say('panel.undo')}
          </button>
        </>
      )}
    </p>
  );
}
