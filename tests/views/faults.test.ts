import { afterEach, beforeAll, describe, expect, test } from 'vitest';
import { serveBackground } from '../../src/host/background/serve-background.ts';
import { DeskPage } from '../../src/pages/desk/desk-page.tsx';
import { GroupsPage } from '../../src/pages/groups/groups-page.tsx';
import { LessonPage } from '../../src/pages/lesson/lesson-page.tsx';
import { Panel } from '../../src/pages/panel/panel.tsx';
import { ReportPage } from '../../src/pages/report/report-page.tsx';
import { ShelfPage } from '../../src/pages/shelf/shelf-page.tsx';
import { WelcomePage } from '../../src/pages/welcome/welcome-page.tsx';
import { refused } from '../fakes/extension.ts';
import { kept } from '../fakes/local-storage.ts';
import { closePage, openPage } from './mount-page.ts';
import { screen } from './screen.ts';

beforeAll(() => serveBackground());

test.each([
  ['groups', GroupsPage],
  ['welcome', WelcomePage],
  ['desk', DeskPage],
  ['lesson', LessonPage],
  ['shelf', ShelfPage],
  ['report', ReportPage],
  ['panel', Panel],
])('the page %s says when the storage cannot be read', async (_, Page) => {
  refused.read = () => 'IO error';
  await openPage(Page);
  const says = screen
    .getByRole('alert')
    .filter({ hasText: 'cannot be read, because the browser refuses it' });
  await says.waitFor();
  expect(await says.textContent()).toMatch(/\(IO error\)\. Nothing was changed\. Close the browser/);
  // No page still says that it is opening.
  await expect.poll(() => screen.getByText(/^(Opening|Reading)/).count()).toBe(0);
});

test('a lesson that cannot be read is kept, and no new one takes its place', async () => {
  await openPage(LessonPage, 'herons');
  await screen.getByRole('button', { name: 'Pin' }).first().click();
  await expect.poll(() => kept.get('lesson/herons/')).toBeTruthy();
  const before = structuredClone(kept.get('lesson/herons/'));
  refused.read = (keys) => (String(keys).startsWith('lesson/') ? 'IO error' : null);
  await openPage(LessonPage, 'herons');
  await screen.getByRole('alert').filter({ hasText: 'IO error' }).waitFor();
  expect(screen.getByRole('button', { name: 'Pin' }).count()).toBe(0);
  expect(kept.get('lesson/herons/')).toEqual(before);
});

/** Opens a database, at its present version or at the version of a newer Wordreach, and runs a change on the database. */
async function openDatabase(
  name: string,
  version: number | undefined,
  change: (db: IDBDatabase) => IDBTransaction | null,
): Promise<void> {
  await new Promise<void>((done, failed) => {
    const opening = indexedDB.open(name, version);
    opening.onerror = failed;
    opening.onsuccess = () => {
      const end = (): void => {
        opening.result.close();
        done();
      };
      const changing = change(opening.result);
      if (changing) changing.oncomplete = end;
      else end();
    };
  });
}

describe.each([
  ['desk', DeskPage, 'passages'],
  ['shelf', ShelfPage, 'texts'],
] as const)('the database of the %s', (name, Page, store) => {
  // Closes the page, so that no page waits while a database that nobody could open is deleted.
  afterEach(closePage);

  test('is reported in a sentence if it cannot be opened', async () => {
    await openDatabase(name, 99, () => null);
    await openPage(Page);
    await screen
      .getByText(/could not (?:store|read or store) it/)
      .first()
      .waitFor();
  });

  test('reports a garbled entry, and the page still shows the rest', async () => {
    await openPage(Page);
    await expect.poll(() => indexedDB.databases()).toContainEqual(expect.objectContaining({ name }));
    await openDatabase(name, undefined, (db) => {
      const change = db.transaction(store, 'readwrite');
      change.objectStore(store).put({ id: 'garbled', title: 7, words: null });
      return change;
    });
    await openPage(Page);
    await expect.poll(() => screen.getByRole('main').allTextContents().join('').length).toBeGreaterThan(50);
    expect(screen.getByText(/^(Opening|Reading)/).count()).toBe(0);
    await screen.getByRole('alert').filter({ hasText: 'is not shown, because it is damaged' }).waitFor();
  });
});
