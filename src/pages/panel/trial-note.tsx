import { changeGroups, chosenGroup, type Groups, tryStep } from '../../host/store/groups-store.ts';
import { moveGroup, today } from '../../host/store/move-group.ts';
import { noteEdit } from '../../ui/edit-log.ts';
import { say } from '../../wording/say.ts';

/**
 * Says that the page is shown at a step other than the group's, and offers to move the group there or to go back.
 * Usually renders nothing.
 */
export function TrialNote({ groups }: { groups: Groups }) {
  if (!groups.trial) return null;
  const { name, step: at } = chosenGroup(groups);
  const { step } = groups.trial;
  return (
    <div class="trial" role="status">
      <p>{say('panel.trial', { group: name, step, at })}</p>
      <p class="page-tools">
        <button type="button" class="tool" onClick={() => void move(groups.chosen, step)}>
          {say('panel.moveGroup', { group: name, step })}
        </button>
        <button type="button" class="plain" onClick={() => void tryStep(null)}>
          {say('panel.backToStep', { step: at })}
        </button>
      </p>
    </div>
  );
}

/** Moves a group to the step that was tried. The undo also restores the day of the step in the group's history. */
async function move(id: string, step: number): Promise<void> {
  let name = '';
  let back: (all: Groups) => Groups = (all) => all;
  await changeGroups((all) => {
    const before = all.groups[id];
    if (!before) return all;
    name = before.name;
    back = (now) => {
      const { history: _, ...group } = now.groups[id] ?? before;
      const { history } = before;
      const moved = { ...group, step: before.step, ...(history && { history }) };
      return { ...now, groups: { ...now.groups, [id]: moved } };
    };
    const { trial: _, ...kept } = all;
    return { ...kept, groups: { ...all.groups, [id]: moveGroup(before, { step }, today()) } };
  });
  noteEdit(say('panel.moved', { group: name, step }), () => changeGroups((all) => back(all)));
}
