import type { Group } from '../../analyze/types.ts';
import { changeGroups, findGroup, freeGroupId, type Groups } from '../../host/store/groups-store.ts';
import { noteEdit } from '../../ui/edit-log.ts';
import { say } from '../../wording/say.ts';

/** Changes one group. The change can be undone. Nothing happens if the group no longer exists. */
export async function editGroup(id: string, says: string, change: (group: Group) => Group): Promise<void> {
  let before: Group | null = null;
  await changeGroups((all) => {
    before = findGroup(all, id);
    return before ? withGroup(all, id, change(before)) : all;
  });
  const was = before as Group | null;
  if (was) noteEdit(says, () => changeGroups((all) => withGroup(all, id, was)));
}

/** Chooses the group that pages are checked against from now on. The choice can be undone. */
export async function putInUse(id: string, says: string): Promise<void> {
  let before = id;
  await changeGroups((all) => {
    before = all.chosen;
    return { ...all, chosen: id };
  });
  noteEdit(says, () => changeGroups((all) => ({ ...all, chosen: before })));
}

/** Adds a group under a new id and returns the id. The addition can be undone. */
export async function addGroup(says: string, group: Group): Promise<string> {
  let id = '';
  await changeGroups((all) => {
    id = freeGroupId(all);
    return withGroup(all, id, group);
  });
  noteEdit(says, () => changeGroups((all) => withoutGroup(all, id)));
  return id;
}

/** Deletes a group. The deletion can be undone. */
export async function deleteGroup(id: string): Promise<void> {
  let before: Groups | undefined;
  await changeGroups((all) => {
    before = all;
    return withoutGroup(all, id);
  });
  const was = before && findGroup(before, id);
  if (!before || !was) return;
  const { chosen } = before;
  noteEdit(say('groups.deleted', { what: was.name }), () =>
    changeGroups((all) => ({
      ...all,
      chosen: chosen === id ? id : all.chosen,
      groups: { ...all.groups, [id]: was },
    })),
  );
}

function withGroup(all: Groups, id: string, group: Group): Groups {
  return { ...all, groups: { ...all.groups, [id]: group } };
}

function withoutGroup(all: Groups, id: string): Groups {
  const { [id]: _, ...groups } = all.groups;
  return { ...all, groups };
}
