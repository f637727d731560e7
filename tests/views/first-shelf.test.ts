import { beforeEach, expect, test } from 'vitest';
import { expectFirstShelf } from '../../src/host/store/first-shelf.ts';
import { ShelfPage } from '../../src/pages/shelf/shelf-page.tsx';
import { openPage } from './mount-page.ts';
import { screen } from './screen.ts';

const button = (name: string) => screen.getByRole('button', { name, exact: true });
const counted = (count: string) => screen.getByText(`${count} on the shelf`).waitFor();

async function openShelf(hash = 'texts'): Promise<void> {
  await openPage(ShelfPage, hash);
  await screen.locator('main .sheet').waitFor();
}

beforeEach(expectFirstShelf);

test('after installation, the shelf has the texts of the extension, with their kinds and steps', async () => {
  await openShelf();
  await counted('48 texts');
  expect(screen.locator('.shelf-row').count()).toBe(48);
  await screen.getByRole('link', { name: 'The Duck and the Bill' }).click();
  expect(await screen.getByLabel('Notes').inputValue()).toBe('For step 10 of “Steady steps”: sh, ck');
  await button('Remove tag story').waitFor();
  await button('Edit this text').waitFor();
  await button('Make a lesson').waitFor();
});

test('one click removes the starter texts, and another click brings them back unchanged', async () => {
  await openShelf();
  await screen.getByRole('link', { name: 'The Itch' }).click();
  await screen.getByLabel('Tags').fill('week 12');
  await screen.getByLabel('Tags').press('Enter');
  await button('Remove tag week 12').waitFor();
  await openShelf();
  await button('Remove these 48 texts').click();
  await screen.getByText('48 texts removed.').waitFor();
  await screen.getByText('The shelf is empty.').waitFor();
  await button('Undo').click();
  await counted('48 texts');
  await screen.getByRole('combobox', { name: 'Tag' }).selectOption('week 12');
  await screen.getByText('1 of 48 texts found').waitFor();
});

test('removed starter texts do not come back by themselves', async () => {
  await openShelf();
  await button('Remove these 48 texts').click();
  await screen.getByText('48 texts removed.').waitFor();
  await openShelf();
  await screen.getByText('The shelf is empty.').waitFor();
  await button('Add the first shelf').click();
  await counted('48 texts');
});

test('adding the first shelf again brings back only deleted starter texts', async () => {
  await openShelf();
  await screen.getByRole('link', { name: 'The Itch' }).click();
  await button('Delete').click();
  await screen.getByRole('alert').getByRole('button', { name: 'Delete' }).click();
  await counted('47 texts');
  await openShelf('file');
  await button('Add the first shelf').click();
  await screen.getByText('One text was added.').waitFor();
  await button('Add the first shelf').click();
  await screen.getByText('They are all on the shelf already.').waitFor();
});
