import { useMemo, useState } from 'preact/hooks';
import { StorageFault } from '../../host/store/store-item.ts';
import { FaultNote } from '../../ui/fault-note.tsx';
import { Masthead } from '../../ui/masthead.tsx';
import { UndoBar } from '../../ui/undo-line.tsx';
import { say } from '../../wording/say.ts';
import '../../ui/page.css';
import '../../ui/wide-page.css';
import './desk.css';
import { DeskContents } from './desk-contents.tsx';
import { IntakeView } from './intake-view.tsx';
import { PassageView } from './passage-view.tsx';
import { TakeView } from './take-view.tsx';
import { useDesk } from './use-desk.ts';

/** The page for adapting found texts. Shows the list of passages and the open passage. */
export function DeskPage() {
  const desk = useDesk();
  const [note, setNote] = useState<{ readonly id: string; readonly says: string } | null>(null);
  const { groups, sequences, passages, opened, taking, swap } = desk;
  // The element is created again only when one of its inputs changes. The list of passages is not an input, because the
  // list changes at every save while somebody is writing.
  const passage = useMemo(
    () =>
      opened !== null &&
      groups &&
      sequences && (
        <PassageView
          key={opened}
          id={opened}
          {...{ groups, sequences, swap }}
          onParted={(title) => setNote({ id: opened, says: say('desk.parted', { title }) })}
        />
      ),
    [opened, groups, sequences, swap],
  );
  return (
    <div class="page desk">
      <Masthead title={say('ui.deskPage')} page="desk" />
      {groups && sequences && passages && (
        <>
          <DeskContents passages={passages} opened={opened} />
          <main tabIndex={-1}>
            {note !== null && note.id === opened && (
              <p class="note" role="status">
                {note.says}
              </p>
            )}
            {passage ? (
              passage
            ) : taking === null ? (
              <IntakeView
                groups={groups}
                sequences={sequences}
                onNote={(id, says) => setNote({ id, says })}
              />
            ) : (
              <TakeView {...taking} onNote={(id, says) => setNote({ id, says })} />
            )}
          </main>
        </>
      )}
      <footer class="quiet">{say('desk.deference')}</footer>
      <UndoBar />
      <FaultNote kind={StorageFault} />
    </div>
  );
}
