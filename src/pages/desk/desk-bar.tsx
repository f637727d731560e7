import type { Groups } from '../../host/store/groups-store.ts';
import type { Passage } from '../../passage/kept/passage.ts';
import { say } from '../../wording/say.ts';
import { listBeside, type PassageState } from './passage-state.ts';
import { SavedNote, type SavedState } from './saved-note.tsx';
import { AS_FOUND } from './use-versions.ts';

interface DeskBarProps {
  readonly passage: Passage;
  readonly groups: Groups;
  readonly state: PassageState;
  readonly saved: SavedState;
  readonly onChange: (change: Partial<PassageState>) => void;
}

/** The bar for choosing the group and the views of a passage, with links to the report and the lesson of the passage. */
export function DeskBar({ passage, groups, state, saved, onChange }: DeskBarProps) {
  const { id } = passage;
  const { groupId, beside } = state;
  return (
    <div class="desk-bar">
      <span>
        <label for="desk-group" class="quiet">
          {say('desk.forGroup')}
        </label>{' '}
        <select
          id="desk-group"
          class="field"
          value={groupId}
          onChange={(event) => onChange({ groupId: event.currentTarget.value })}
        >
          {Object.entries(groups.groups).map(([key, { name }]) => (
            <option key={key} value={key}>
              {name}
            </option>
          ))}
        </select>
      </span>
      <span>
        <label for="desk-beside" class="quiet">
          {say('desk.beside')}
        </label>{' '}
        <select
          id="desk-beside"
          class="field"
          value={beside}
          onChange={(event) => onChange({ beside: event.currentTarget.value })}
        >
          <option value="">{say('desk.besideNothing')}</option>
          <option value={AS_FOUND}>{say('desk.besideAsFound')}</option>
          {listBeside(groups, passage, groupId).map(({ id, name }) => (
            <option key={id} value={id}>
              {say('desk.besideTextFor', { group: name })}
            </option>
          ))}
        </select>
      </span>
      <a
        class="plain"
        href={`/report.html#passage/${id}/${encodeURIComponent(groupId)}`}
        target="_blank"
        rel="noopener"
      >
        {say('desk.climbAndReport')}
      </a>
      <a
        class="plain"
        href={`/lesson.html#${encodeURIComponent(groupId)}/${id}`}
        target="_blank"
        rel="noopener"
      >
        {say('desk.makeALesson')}
      </a>
      <SavedNote saved={saved} />
    </div>
  );
}
