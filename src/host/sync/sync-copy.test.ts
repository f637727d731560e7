import { beforeEach, expect, test, vi } from 'vitest';
import { withName } from '../../../tests/fakes/with-name.ts';
import { parseGroup, parseSequence } from '../../analyze/index.ts';
import { changeGroups, loadGroups } from '../store/groups-store.ts';
import { changeSequences, loadSequences } from '../store/sequences-store.ts';
import { packText, unpackText } from './pack-text.ts';
import { copyNow } from './sync-copy.ts';
import { changeSyncState, loadSyncState } from './sync-state.ts';

/** The storage of two browsers and of the account they share. `use` selects the browser in which the code runs. */
const fake = vi.hoisted(() => {
  const locals = [new Map<string, unknown>(), new Map<string, unknown>()];
  const account = new Map<string, unknown>();
  let at = 0;
  const area = (kept: () => Map<string, unknown>) => ({
    get: async (keys?: string | string[]) =>
      structuredClone(
        Object.fromEntries([...kept()].filter(([key]) => keys === undefined || [keys].flat().includes(key))),
      ),
    set: async (items: Record<string, unknown>) => {
      for (const [key, value] of Object.entries(items)) kept().set(key, structuredClone(value));
    },
  });
  return {
    account,
    use: (browser: 0 | 1) => {
      at = browser;
    },
    clear: () => {
      for (const kept of [...locals, account]) kept.clear();
    },
    storage: {
      local: area(() => locals[at]!),
      sync: area(() => account),
      managed: { get: async () => ({}) },
    },
  };
});
vi.mock('../browser.ts', () => ({ browser: { storage: fake.storage } }));

beforeEach(async () => {
  fake.clear();
  for (const browser of [1, 0] as const) {
    fake.use(browser);
    await changeSyncState((state) => ({ ...state, on: true }));
  }
});

async function rename(name: string): Promise<void> {
  await changeGroups((all) => ({
    ...all,
    groups: { ...all.groups, herons: { ...all.groups.herons!, name } },
  }));
  await copyNow();
}

async function names(): Promise<string[]> {
  await copyNow();
  return Object.values((await loadGroups()).groups).map(({ name }) => name);
}

test('a group is copied to the other browser without its names, and comes back without losing them', async () => {
  await changeGroups((all) => ({
    ...all,
    groups: { ...all.groups, herons: { ...all.groups.herons!, names: ['Thyra'] } },
  }));
  await rename('Terns');
  const copies = await Promise.all(
    [...fake.account.values()].map((item) => unpackText((item as { packed: string }).packed)),
  );
  expect(copies.join()).toContain('Terns');
  expect(copies.join()).not.toMatch(/Thyra|Wilma/);
  fake.use(1);
  expect(await names()).toEqual(['Plovers', 'Terns']);
  expect((await loadGroups()).groups.herons!.names).not.toContain('Thyra');
  await rename('Gulls');
  fake.use(0);
  expect(await names()).toEqual(['Gulls', 'Plovers']);
  expect((await loadGroups()).groups.herons!.names).toEqual(['Thyra']);
});

test('a group that changed in both browsers becomes two groups, each with its names', async () => {
  await rename('Terns');
  fake.use(1);
  await rename('Gulls');
  expect(await names()).toEqual(['Gulls (this browser)', 'Plovers', 'Terns']);
  const { groups } = await loadGroups();
  expect(Object.values(groups).find(({ name }) => name.startsWith('Gulls'))?.names).toContain('Wilma');
});

test('garbled entries do not prevent other entries from being copied', async () => {
  await rename('Terns');
  const { groups } = (await fake.storage.local.get('groups')) as { groups: { groups: object } };
  await fake.storage.local.set({ groups: { ...groups, groups: { ...groups.groups, odd: null } } });
  for (const [key, item] of [
    ['group:a', null],
    ['group:b', 7],
    ['group:c', { changed: 'now', packed: 'none' }],
  ] as const)
    fake.account.set(key, item);
  await rename('Gulls');
  fake.use(1);
  expect(await names()).toEqual(['Gulls', 'Plovers']);
});

test('deletions and the teacher’s own sequences are copied', async () => {
  await rename('Terns');
  fake.use(1);
  await copyNow();
  const steady = (await loadSequences()).starters.find(({ id }) => id === 'steady-steps')!;
  await changeSequences((own) => ({ ...own, ours: { ...steady, id: 'ours', name: 'Ours' } }));
  await changeGroups(({ groups: { herons: _, ...groups }, ...all }) => ({ ...all, groups }));
  await copyNow();
  fake.use(0);
  expect(await names()).toEqual(['Plovers']);
  expect((await loadSequences()).own.ours).toEqual({ ...steady, id: 'ours', name: 'Ours' });
  expect((await loadSyncState()).left).toEqual([]);
});

test('a group that does not fit in the account stays in this browser and is listed by name', async () => {
  await rename('Terns');
  const words = Array.from({ length: 4000 }, (_, i) => `w${((i * 7919) % 46656).toString(36)}`);
  await changeGroups((all) => ({
    ...all,
    groups: { ...all.groups, big: { ...all.groups.herons!, name: 'Big', bySight: words } },
  }));
  await copyNow();
  expect((await loadSyncState()).left).toEqual(['Big']);
  expect((await loadGroups()).groups.big!.bySight).toHaveLength(words.length);
  await changeGroups((all) => ({
    ...all,
    groups: { ...all.groups, big: { ...all.groups.big!, bySight: [] } },
  }));
  await copyNow();
  expect((await loadSyncState()).left).toEqual([]);
  expect(fake.account.has('group:big')).toBe(true);
});

test('a group that the account refuses for now is listed by name and copied later', async () => {
  const set = vi.spyOn(fake.storage.sync, 'set').mockRejectedValue(new Error('too many writes'));
  await rename('Terns');
  expect((await loadSyncState()).left).toContain('Terns');
  set.mockRestore();
  await copyNow();
  expect((await loadSyncState()).left).toEqual([]);
  expect(fake.account.has('group:herons')).toBe(true);
});

test('an entry written by another version is not copied in either direction', async () => {
  await rename('Terns');
  const later = { changed: Date.now() + 1e6, packed: await packText('{"name":"Terns","pupils":9}') };
  fake.account.set('group:herons', later);
  fake.account.set('group:odd', { changed: 1, packed: '%' });
  expect(await names()).toEqual(['Plovers', 'Terns']);
  await rename('Gulls');
  expect(fake.account.get('group:herons')).toEqual(later);
});

test('nothing is copied while copying is off', async () => {
  await changeSyncState((state) => ({ ...state, on: false }));
  await rename('Terns');
  expect(fake.account.size).toBe(0);
});

test.each(['constructor', '__proto__', 'toString', 'hasOwnProperty'])(
  'a copy with %s as its id or anywhere inside does no harm',
  async (name) => {
    const group = {
      name: 'Terns',
      sequence: 'quay-steps',
      step: 1,
      alsoTaught: ['ai'],
      options: { wh: 'free' },
    };
    const steps = [{ title: 'First', teaches: ['m'], bySight: ['the'] }];
    const sequence = { id: 'quay-steps', name: 'Quay steps', source: 'own', licence: 'own', steps };
    let changed = Date.now();
    for (const [kind, item] of [
      ['group', group],
      ['sequence', sequence],
    ] as const)
      for (const other of withName(item, name)) {
        const packed = await packText(JSON.stringify(other));
        fake.account.set(`${kind}:${name}`, { changed: ++changed, packed });
        for (const copy of withName({ changed: 'now', packed }, name)) {
          fake.account.set(`${kind}:other`, copy);
          await copyNow();
        }
        const { groups, chosen } = await loadGroups();
        expect(Object.hasOwn(groups, chosen)).toBe(true);
        for (const each of Object.values(groups)) expect(parseGroup(each)).toEqual(each);
        for (const each of Object.values((await loadSequences()).own))
          expect(parseSequence(each)).toEqual(each);
      }
  },
);
