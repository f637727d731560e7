import { useState } from 'preact/hooks';
import { StorageFault } from '../../host/store/store-item.ts';
import { FaultNote } from '../../ui/fault-note.tsx';
import { Masthead } from '../../ui/masthead.tsx';
import { UndoBar } from '../../ui/undo-line.tsx';
import { LoadFault, useLoaded } from '../../ui/use-loaded.ts';
import '../../ui/page.css';
import '../../ui/wide-page.css';
import { useLessonAddress } from './lesson-address.ts';
import './lesson.css';
import { say } from '../../wording/say.ts';
import { LessonView } from './lesson-view.tsx';
import { loadTools, useStored } from './use-lesson.ts';

/** The page for planning a group’s lesson of the day, with or without a passage. */
export function LessonPage() {
  const stored = useStored();
  const tools = useLoaded(loadTools);
  const { group, passage } = useLessonAddress();
  const [isRefused, setRefused] = useState(false);
  const groupId = stored && (Object.hasOwn(stored.groups.groups, group) ? group : stored.groups.chosen);
  const found = stored?.passages.find(({ id }) => id === passage) ?? null;
  return (
    <div class="page lesson">
      <Masthead title={say('ui.lessonPage')} page="lesson" />
      <main tabIndex={-1}>
        {tools instanceof LoadFault ? (
          <p class="note" role="alert">
            {say('lesson.noTable', { why: tools.message })}
          </p>
        ) : stored && groupId !== null ? (
          <LessonView
            key={`${groupId} ${found?.id ?? ''}`}
            stored={stored}
            tools={tools}
            groupId={groupId}
            passage={found}
          />
        ) : (
          !isRefused && <p class="note">{say('lesson.opening')}</p>
        )}
      </main>
      <footer class="quiet">{say('lesson.footer')}</footer>
      <UndoBar />
      <FaultNote kind={StorageFault} onFault={setRefused} />
    </div>
  );
}
