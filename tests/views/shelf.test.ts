import { beforeEach, describe, expect, test, vi } from 'vitest';
import { changeGroups } from '../../src/host/store/groups-store.ts';
import { ShelfPage } from '../../src/pages/shelf/shelf-page.tsx';
import { kept } from '../fakes/local-storage.ts';
import { openPage, readDatabase, saved } from './mount-page.ts';
import { screen } from './screen.ts';

beforeEach(() => open('add'));

async function open(view: string): Promise<void> {
  await openPage(ShelfPage, view);
  if (view === 'add') await screen.getByRole('heading', { name: 'Add texts' }).waitFor();
}

const NET =
  'Bram has a big net. The net is in the mud. Otto has a cod and a crab in his net. It is a hot day.';
const RAIN =
  'Wait on the quay. The rain came. Ines and Bram wait in the rain. A snail sat on the mail. Otto had a pail.';
const FERRY =
  'The Marigold turned slowly round the lighthouse. Passengers leaned over the railings, searching for the harbour.';
const stories = [
  new File([FERRY], 'The ferry.txt'),
  new File([NET], 'A big net.txt'),
  new File([RAIN], 'Rain.txt'),
];

const choose = (files: readonly File[]) => screen.getByLabel(/^Choose texts/).setInputFiles(files);
async function addAll(files: readonly File[]): Promise<void> {
  await choose(files);
  await screen
    .getByRole('status')
    .filter({ hasText: /^(one|\d+) read\./ })
    .waitFor();
}

async function titles(): Promise<string[]> {
  await openPage(ShelfPage, 'texts');
  await screen.locator('.shelf-row').first().waitFor();
  return screen.locator('.shelf-title').allTextContents();
}

/**
 * Returns everything in the database of the shelf. Keys are sorted, since an object read from a file may have its keys
 * in another order.
 */
async function readRaw(): Promise<string> {
  return JSON.stringify(Object.values(await readDatabase('shelf')), (_, value: unknown) =>
    value?.constructor === Object ? Object.fromEntries(Object.entries(value).sort()) : value,
  );
}

/** Moves the group Herons to another step, as another window would. */
async function moveTo(step: number): Promise<void> {
  await changeGroups((all) => ({
    ...all,
    groups: { ...all.groups, herons: { ...all.groups.herons!, step } },
  }));
}

describe('the list of the shelf', () => {
  test('texts ready now come first, then texts ready soonest, and search and tags narrow the list', async () => {
    await screen.getByLabel(/^Tags for all/).fill('harbour');
    await addAll(stories);
    expect(await titles()).toEqual(['A big net', 'Rain', 'The ferry']);
    expect(screen.locator('.shelf-band h2').allTextContents()).toEqual([
      'Ready now 1 text',
      'Ready within 5 steps 1 text',
      'Ready later, or not in this sequence 1 text',
    ]);
    expect(await screen.locator('.shelf-row').nth(1).textContent()).toMatch(/ready in 5 steps/);
    await screen.getByLabel('Search').fill('RAIN');
    await screen.getByText('1 of 3 texts found').waitFor();
    await screen.getByLabel('Search').fill('');
    await screen.getByRole('combobox', { name: 'Tag' }).selectOption('harbour');
    await screen.getByText('3 texts on the shelf').waitFor();
  });

  test('another mark is saved, but only from 90 to 100', async () => {
    await addAll(stories);
    await titles();
    const mark = screen.getByLabel('Count as ready from');
    await mark.fill('90');
    await mark.press('Tab');
    await expect.poll(() => kept.get('shelf-mark')).toBe(90);
    await mark.fill('70');
    await mark.press('Tab');
    await expect.poll(() => mark.inputValue()).toBe('90');
    await titles();
    expect(await mark.inputValue()).toBe('90');
  });

  test('when a group moves on, the texts that became readable are shown until they are dismissed', async () => {
    const seenStep = () =>
      (kept.get('shelf-seen') as Record<string, { step: number }> | undefined)?.herons?.step;
    await addAll(stories);
    await titles();
    expect(screen.locator('.shelf-news').count()).toBe(0);
    await expect.poll(seenStep).toBe(24);
    await moveTo(29);
    const news = screen.getByRole('region', { name: 'News for Herons' });
    await news.getByRole('heading', { name: 'One more text is ready for Herons' }).waitFor();
    expect(news.getByRole('link').allTextContents()).toEqual(['Rain']);
    await titles();
    await news.waitFor();
    await news.getByRole('button', { name: /Dismiss/ }).click();
    await news.waitFor({ state: 'detached' });
    await expect.poll(seenStep).toBe(29);
    await titles();
    expect(news.count()).toBe(0);
    await moveTo(24);
    await screen.getByText('ready in 5 steps').waitFor();
    expect(news.count()).toBe(0);
  });

  test('a text is tagged, noted and deleted', async () => {
    await screen.getByLabel('keep full text').check();
    await addAll(stories);
    await titles();
    await screen.getByRole('link', { name: 'A big net' }).click();
    for (const name of ['Edit this text', 'Make a lesson'])
      await screen.getByRole('button', { name }).waitFor();
    await screen.getByLabel('Tags').fill('boats, week 12');
    await screen.getByLabel('Tags').press('Enter');
    await screen.getByLabel('Notes').fill('with the song of the net');
    await screen.getByRole('button', { name: 'Remove tag boats' }).click();
    await screen.getByRole('button', { name: 'Remove tag boats' }).waitFor({ state: 'detached' });
    expect(screen.getByRole('button', { name: 'Remove tag week 12' }).count()).toBe(1);
    await screen.getByRole('button', { name: 'Delete', exact: true }).click();
    await expect.poll(() => document.activeElement?.textContent).toBe('Keep');
    await screen.getByRole('button', { name: 'Delete', exact: true }).click();
    await screen.getByText('2 texts on the shelf').waitFor();
    const raw = await readRaw();
    expect(raw).not.toMatch(/big net|song|cod/);
    expect(raw).toContain('lighthouse');
  });
});

describe('reading many texts at once', () => {
  test('keeps its results when it is stopped, and reads each remaining text once when it is resumed', async () => {
    const names = Array.from({ length: 40 }, (_, n) => `Log ${n}`);
    await choose(names.map((name, n) => new File([`${FERRY} Page ${n}.\n\n`.repeat(300)], `${name}.txt`)));
    await screen.getByText(/^[1-9]\d* of 40 read\.$/).waitFor();
    await screen.getByRole('button', { name: 'Stop' }).click();
    const says = await screen.getByText(/^Stopped after \d+ of 40/).textContent();
    expect(Number(/\d+/.exec(says)![0])).toBeLessThan(40);
    await screen.getByRole('link', { name: 'Texts', exact: true }).click();
    await screen.locator('.shelf-row').first().waitFor();
    await screen.getByRole('link', { name: 'Add texts' }).click();
    await screen.getByRole('button', { name: 'Continue' }).click();
    await screen.getByText('40 read. 40 texts saved to the shelf.').waitFor();
    expect((await titles()).toSorted()).toEqual(names.toSorted());
  });

  test('texts that are only vetted are not on the shelf until they are saved there', async () => {
    await screen.getByLabel('only compare, do not save').check();
    expect(screen.getByRole('heading', { name: 'Texts read' }).count()).toBe(0);
    await choose(stories);
    await screen.getByText('3 read. 3 texts in the table below.').waitFor();
    expect(screen.locator('.shelf-table tbody tr').count()).toBe(3);
    expect(await readRaw()).not.toContain('lighthouse');
    await screen.getByRole('button', { name: 'Save these 3 to shelf' }).click();
    await screen.getByText('Saved to the shelf.').waitFor();
    expect(await titles()).toHaveLength(3);
  });
});

test('a shelf that is saved in a file, deleted and opened again is the same as before', async () => {
  await screen.getByLabel('keep full text').check();
  await addAll(stories);
  const before = await readRaw();
  expect(before).toContain('Passengers leaned over');
  await open('file');
  await screen.getByRole('button', { name: 'Save the file' }).click();
  await expect.poll(() => saved).toHaveLength(1);
  const file = new File([await saved[0]!.content.text()], saved[0]!.name);
  await screen.getByRole('button', { name: /^Delete these 3 texts/ }).click();
  await screen.getByRole('button', { name: 'Delete', exact: true }).click();
  await screen.getByText('The whole shelf: 0 texts').waitFor();
  expect(await readRaw()).toBe('[[],[]]');
  const field = screen.getByLabel('Choose a file, or drop it here');
  await field.setInputFiles([file]);
  await screen.getByText('Added: 3 texts on the shelf.').waitFor();
  expect(await readRaw()).toBe(before);
  await field.setInputFiles([file]);
  await screen.getByText('You already have everything in this file.').waitFor();
  await field.setInputFiles([new File(['{"steps":[]}'], 'a.jsonl')]);
  await screen.getByText(/Nothing was changed/).waitFor();
  expect(await readRaw()).toBe(before);
});

test('the groups are columns of a table, which can be sorted by each column, also by keys, and printed whole', async () => {
  await addAll(stories);
  await open('groups');
  await screen.locator('.shelf-table').waitFor();
  const rows = () => screen.locator('.shelf-table tbody th').allTextContents();
  expect(rows()).toEqual(['A big net', 'Rain', 'The ferry']);
  expect(screen.locator('.shelf-table thead th').allTextContents()).toEqual([
    'Text',
    'Words',
    'Herons ↓step 24',
    expect.stringMatching(/^Ploversstep \d+$/),
  ]);
  await screen.getByRole('button', { name: 'Text', exact: true }).press('Enter');
  expect(rows()).toEqual(['A big net', 'Rain', 'The ferry']);
  await screen.getByRole('button', { name: 'Text', exact: true }).press('Enter');
  expect(rows()).toEqual(['The ferry', 'Rain', 'A big net']);
  expect(await screen.getByRole('columnheader', { name: 'Text' }).getAttribute('aria-sort')).toBe(
    'descending',
  );
  await screen.getByLabel('Plovers').uncheck();
  expect(screen.locator('.shelf-table thead th').count()).toBe(3);
  let printed = 0;
  vi.stubGlobal('print', () => {
    printed = screen.locator('.shelf-table tbody tr').count();
  });
  await screen.getByRole('button', { name: /Print/ }).click();
  await expect.poll(() => printed).toBe(3);
});

test('Alt and an arrow key move a column of the table, and the column stays in its new place', async () => {
  const heads = () =>
    screen
      .locator('.shelf-table thead th .shelf-sort')
      .allTextContents()
      .map((name) => name.replace(/ [↓↑]/, ''));
  await addAll(stories);
  await open('groups');
  await screen.locator('.shelf-table').waitFor();
  expect(heads()).toEqual(['Text', 'Words', 'Herons', 'Plovers']);
  await screen.getByRole('button', { name: /^Herons/ }).press('Alt+ArrowRight');
  await screen.getByText('Herons is now column 2.').waitFor();
  await expect.poll(heads).toEqual(['Text', 'Words', 'Plovers', 'Herons']);
  expect(document.activeElement?.textContent).toMatch(/^Herons/);
  await open('groups');
  await expect.poll(heads).toEqual(['Text', 'Words', 'Plovers', 'Herons']);
});

test('an update adds no texts to a shelf that already existed', async () => {
  await openPage(ShelfPage, 'texts');
  await screen.getByText('The shelf is empty.').waitFor();
  await screen.getByRole('button', { name: 'Add the first shelf' }).waitFor();
});
