import { afterEach, describe, expect, test, vi } from 'vitest';
import { kept } from '../../../tests/fakes/local-storage.ts';
import { browser } from '../browser.ts';
import { readItem, readItems, StorageFault, storeItem, storeItems } from './store-item.ts';

vi.mock('../browser.ts', () => import('../../../tests/fakes/local-storage.ts'));
const { local } = browser.storage;
const { get, set } = local;
afterEach(() => {
  kept.clear();
  Object.assign(local, { get, set });
});

test('a stored value can be read alone, with others, or with all values', async () => {
  await storeItem('look', 'wash');
  await storeItems({ mark: 95, groups: {} });
  expect(await readItem('look')).toBe('wash');
  expect(await readItem('none')).toBeUndefined();
  expect(await readItems(['mark', 'none'])).toEqual({ mark: 95 });
  expect(await readItems(null)).toEqual({ look: 'wash', mark: 95, groups: {} });
});

describe('a refusal by the storage is explained in a sentence', () => {
  const refuse = (error: unknown) => async () => {
    throw error;
  };

  test.each<[string, unknown, RegExp]>([
    ['an error, by its message', new Error('the disk is gone'), /\(the disk is gone\)/],
    ['a value that is no error, as it is', 'the disk is gone', /\(the disk is gone\)/],
    ['a full storage', new Error('Resource::kQuotaBytes quota exceeded'), /storage for Wordreach is full/],
  ])('for %s', async (_what, error, says) => {
    Object.assign(local, { set: refuse(error) });
    const storing = storeItem('look', 'wash');
    await expect(storing).rejects.toThrow(StorageFault);
    await expect(storing).rejects.toThrow(says);
    await expect(storing).rejects.toMatchObject({ cause: error });
  });

  test('for a read that fails', async () => {
    Object.assign(local, { get: refuse(new Error('the disk is gone')) });
    await expect(readItem('look')).rejects.toThrow(StorageFault);
    await expect(readItems(null)).rejects.toThrow(/\(the disk is gone\)/);
  });
});
