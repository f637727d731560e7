import { beforeEach, describe, expect, test, vi } from 'vitest';
import {
  changeChosen,
  changeGroups,
  chosenGroup,
  freeGroupId,
  type Groups,
  loadGroups,
  watchGroups,
} from './groups-store.ts';

type Listener = (changes: Record<string, { newValue?: unknown }>, area: string) => void;

/** An in-memory fake of the part of the browser's storage that the store uses. Values are copied, as in the browser. */
const fake = vi.hoisted(() => {
  const kept = new Map<string, unknown>();
  const listeners = new Set<Listener>();
  const storage = {
    local: {
      get: async (key: string) => structuredClone({ [key]: kept.get(key) }),
      set: async (items: Record<string, unknown>) => {
        for (const [key, value] of Object.entries(items)) {
          kept.set(key, structuredClone(value));
          for (const listen of listeners) listen({ [key]: { newValue: structuredClone(value) } }, 'local');
        }
      },
    },
    onChanged: {
      addListener: (listen: Listener) => listeners.add(listen),
      removeListener: (listen: Listener) => listeners.delete(listen),
    },
  };
  return { kept, listeners, storage };
});
vi.mock('../browser.ts', () => ({ browser: { storage: fake.storage } }));

beforeEach(() => fake.kept.clear());

const owls = { name: 'Owls', sequence: null, alsoTaught: ['ai'] };
const broken = { name: 'Terns', sequence: null, alsoTaught: ['no such pattern'] };

describe('before anything is stored', () => {
  test('the two starter groups exist, Herons is chosen, and loading stores nothing', async () => {
    const groups = await loadGroups();
    expect(Object.values(groups.groups).map(({ name }) => name)).toEqual(['Herons', 'Plovers']);
    expect(chosenGroup(groups).name).toBe('Herons');
    expect(fake.kept.size).toBe(0);
  });
});

describe('changes', () => {
  test('made at the same time are all kept', async () => {
    await Promise.all(
      ['ai', 'ee', 'oa'].map((id) =>
        changeChosen((group) => ({ ...group, alsoTaught: [...group.alsoTaught, id] })),
      ),
    );
    expect(chosenGroup(await loadGroups()).alsoTaught).toEqual(['ai', 'ee', 'oa']);
  });

  test('leave the other groups as they were', async () => {
    const before = await loadGroups();
    await changeChosen((group) => ({ ...group, step: 3 }));
    const after = await loadGroups();
    expect(after.groups.plovers).toEqual(before.groups.plovers);
    expect(chosenGroup(after)).toEqual({ ...chosenGroup(before), step: 3 });
  });

  test('that fail do not prevent later changes', async () => {
    await expect(
      changeGroups(() => {
        throw new Error('no');
      }),
    ).rejects.toThrow('no');
    await changeGroups((groups) => ({ ...groups, chosen: 'plovers' }));
    expect(chosenGroup(await loadGroups()).name).toBe('Plovers');
  });

  test('are reported until the watch is aborted', async () => {
    const seen: Groups[] = [];
    const controller = new AbortController();
    watchGroups((groups) => seen.push(groups), controller.signal);
    await changeChosen((group) => ({ ...group, step: 7 }));
    controller.abort();
    await changeChosen((group) => ({ ...group, step: 8 }));
    expect(seen.map((groups) => chosenGroup(groups).step)).toEqual([7]);
    expect(fake.listeners.size).toBe(0);
  });
});

describe('stored groups that cannot be read', () => {
  const stored = () => (fake.kept.get('groups') as { groups: Record<string, unknown> }).groups;

  test('stay unchanged in storage when other groups change', async () => {
    fake.kept.set('groups', { version: 1, chosen: 'terns', groups: { terns: broken, owls } });
    expect(chosenGroup(await loadGroups()).name).toBe('Owls');
    await changeChosen((group) => ({ ...group, step: 2 }));
    expect(stored().terns).toEqual(broken);
  });

  test('are not replaced by a starter group with the same id', async () => {
    fake.kept.set('groups', { version: 1, chosen: 'herons', groups: { herons: broken } });
    expect(chosenGroup(await loadGroups()).name).toBe('Herons');
    await changeChosen((group) => ({ ...group, step: 2 }));
    expect(stored().herons).toEqual(broken);
    expect(chosenGroup(await loadGroups())).toMatchObject({ name: 'Herons', step: 2 });
  });

  test('keep their ids, which new groups cannot get', async () => {
    fake.kept.set('groups', { version: 1, chosen: 'owls', groups: { owls, 'group-1': broken } });
    expect(freeGroupId(await loadGroups())).toBe('group-2');
  });

  test.each([null, 7, 'groups', {}, { groups: {} }])(
    'lead to the starter groups when the whole stored value is %j',
    async (value) => {
      fake.kept.set('groups', value);
      expect(chosenGroup(await loadGroups()).name).toBe('Herons');
    },
  );
});
