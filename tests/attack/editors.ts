import type { Locator, Page } from 'playwright-core';

/** A place where a teacher types, and the place where the text is found after the next start of the browser. */
export interface Editor {
  readonly name: string;
  /** Opens the place and puts the insertion point in a field. The next key replaces the field's content. */
  open(page: Page, inside: (path: string) => string): Promise<void>;
  /** Returns the text that is shown after the next start of the browser. */
  kept(page: Page, inside: (path: string) => string): Promise<string>;
}

/** All places where text is typed and kept. The tests try the first places of the list. */
export const editors: readonly Editor[] = [
  {
    name: 'the desk',
    async open(page, inside) {
      await newPassage(page, inside);
      await selectText(page);
    },
    kept: (page, inside) => lastPassage(page, inside),
  },
  {
    name: 'the desk in a second window',
    async open(page, inside) {
      const id = await newPassage(page, inside);
      const second = await page.context().newPage();
      await second.goto(inside(`desk.html#passage/${id}`));
      await second.locator('.cm-content').waitFor();
      await second.close();
      // The text saved by the other window since then is a version beside this one.
      await page.bringToFront();
      await page.evaluate(async (id) => {
        const db = await new Promise<IDBDatabase>((resolve) => {
          indexedDB.open('desk').onsuccess = ({ target }) => resolve((target as IDBOpenDBRequest).result);
        });
        const store = db.transaction('passages', 'readwrite').objectStore('passages');
        store.get(id).onsuccess = ({ target }) => {
          const { result } = target as IDBRequest<{ rev: number }>;
          store.put({ ...result, rev: result.rev + 1 });
        };
        await new Promise((resolve) => {
          store.transaction.oncomplete = resolve;
        });
        db.close();
      }, id);
      await selectText(page);
    },
    kept: (page, inside) => lastPassage(page, inside),
  },
  {
    name: 'a text for the desk',
    async open(page, inside) {
      await openAnew(page, inside('desk.html#new'));
      await page.locator('#pasted').click();
      await page.keyboard.press('Control+A');
    },
    async kept(page, inside) {
      await openAnew(page, inside('desk.html#new'));
      await page.locator('#pasted').waitFor();
      await toRest(page);
      return page.locator('#pasted').inputValue();
    },
  },
  {
    name: 'a pasted sequence',
    async open(page, inside) {
      await openAnew(page, inside('groups.html#paste'));
      await page.locator('#pasted').click();
      await page.keyboard.press('Control+A');
    },
    async kept(page, inside) {
      await openAnew(page, inside('groups.html#paste'));
      await page.locator('#pasted').waitFor();
      await toRest(page);
      return page.locator('#pasted').inputValue();
    },
  },
  {
    name: 'the names of a group',
    async open(page, inside) {
      await openAnew(page, inside('groups.html#group/herons'));
      await namesOf(page).click();
      await page.keyboard.press('Control+A');
    },
    async kept(page, inside) {
      await openAnew(page, inside('groups.html#group/herons'));
      await namesOf(page).waitFor();
      await toRest(page);
      return namesOf(page).inputValue();
    },
  },
  {
    name: 'a part of a lesson',
    async open(page, inside) {
      await openAnew(page, inside('lesson.html#herons'));
      await page.locator('.lesson-part').nth(3).waitFor();
      await page.getByRole('button', { name: 'Edit' }).first().click();
      await page.locator('.lesson-editor input[type=text]').first().click();
      await page.keyboard.press('Control+A');
    },
    async kept(page, inside) {
      await openAnew(page, inside('lesson.html#herons'));
      await page.locator('.lesson-part').nth(3).waitFor();
      await page.getByRole('button', { name: 'Edit' }).first().click();
      return page.locator('.lesson-editor input[type=text]').first().inputValue();
    },
  },
  {
    name: 'notes on a text of the shelf',
    async open(page, inside) {
      await openFirstText(page, inside);
      await page.locator('.shelf-notes textarea').click();
      await page.keyboard.press('Control+A');
    },
    async kept(page, inside) {
      await openFirstText(page, inside);
      return page.locator('.shelf-notes textarea').inputValue();
    },
  },
  field(
    'the title of a passage',
    async (page, inside) => {
      // Opens the passage from the previous kill, if there is one.
      await openAnew(page, inside('desk.html'));
      if ((await idOfLast(page)) === null) await newPassage(page, inside);
      await openLastPassage(page, inside);
    },
    (page) => page.locator('#title'),
  ),
  field('the topic of a passage', at('desk.html#new'), (page) => page.locator('#begin-topic')),
  field('addresses for the shelf', at('shelf.html#add'), (page) => page.locator('main textarea').first()),
  field('tags of many texts', at('shelf.html#add'), (page) => page.getByLabel(/^Tags for all/)),
  field('tags of a text', openFirstText, (page) => page.locator('.shelf-tag-field input')),
  field('the title of a text', openFirstText, (page) => page.locator('#shelf-title')),
  field('the name of a group', at('groups.html#group/herons'), (page) => page.getByLabel('Group name')),
  field('the name of a first group', at('welcome.html'), (page) => page.locator('#welcome-name')),
  {
    name: 'the name of a preset',
    async open(page, inside) {
      await openAnew(page, inside('lesson.html#herons'));
      await page.locator('.lesson-part').nth(3).waitFor();
      const name = page.getByLabel('Name of the preset');
      // The field is already open if a typed name was restored.
      await toRest(page);
      if (!(await name.isVisible())) await page.getByRole('button', { name: 'Save as preset' }).click();
      await name.click();
      await page.keyboard.press('Control+A');
    },
    async kept(page, inside) {
      await openAnew(page, inside('lesson.html#herons'));
      await page.locator('.lesson-part').nth(3).waitFor();
      await toRest(page);
      const name = page.getByLabel('Name of the preset');
      return (await name.isVisible()) ? name.inputValue() : '';
    },
  },
];

/** Creates an editor for a field that exists as soon as its page is open. */
function field(name: string, show: Editor['open'], find: (page: Page) => Locator): Editor {
  return {
    name,
    async open(page, inside) {
      await show(page, inside);
      await find(page).click();
      await page.keyboard.press('Control+A');
    },
    async kept(page, inside) {
      await show(page, inside);
      await find(page).waitFor();
      await toRest(page);
      return find(page).inputValue();
    },
  };
}

function at(path: string): Editor['open'] {
  return (page, inside) => openAnew(page, inside(path));
}

const namesOf = (page: Page) => page.getByRole('textbox', { name: 'Names', exact: true });

/** Opens an address anew, even if only its part after # differs from the current address. */
async function openAnew(page: Page, address: string): Promise<void> {
  await page.goto('about:blank');
  await page.goto(address);
}

/** Waits for the saved text, which appears a moment after the field. */
async function toRest(page: Page): Promise<void> {
  await page.evaluate(() => chrome.storage.local.get(null).then(() => undefined));
  await page.evaluate(() => new Promise((rested) => requestAnimationFrame(() => setTimeout(rested))));
}

/** Opens a new passage and returns its id. */
async function newPassage(page: Page, inside: (path: string) => string): Promise<string> {
  await openAnew(page, inside('desk.html#new'));
  await page.locator('#pasted').fill('Bram.');
  await page.getByRole('button', { name: 'Make a passage' }).click();
  await page.locator('.cm-content').waitFor();
  return page.url().split('/').at(-1)!;
}

async function selectText(page: Page): Promise<void> {
  await page.locator('.cm-content').click();
  await page.keyboard.press('Control+A');
}

/** Returns the text of the passage that was saved last. */
async function lastPassage(page: Page, inside: (path: string) => string): Promise<string> {
  await openLastPassage(page, inside);
  return (await page.locator('.cm-line').allTextContents()).join('\n');
}

async function openLastPassage(page: Page, inside: (path: string) => string): Promise<void> {
  await openAnew(page, inside('desk.html'));
  const id = await idOfLast(page);
  await openAnew(page, inside(`desk.html#passage/${id}`));
  await page.locator('.cm-content').waitFor();
}

async function idOfLast(page: Page): Promise<string | null> {
  return page.evaluate(
    () =>
      new Promise<string | null>((resolve) => {
        indexedDB.open('desk').onsuccess = ({ target }) => {
          const { result: db } = target as IDBOpenDBRequest;
          const all = db.transaction('passages').objectStore('passages').getAll();
          all.onsuccess = () => {
            const passages = all.result as { id: string; saved: number }[];
            db.close();
            resolve(passages.sort((a, b) => b.saved - a.saved)[0]?.id ?? null);
          };
        };
      }),
  );
}

async function openFirstText(page: Page, inside: (path: string) => string): Promise<void> {
  await openAnew(page, inside('shelf.html'));
  const snake = page.getByRole('link', { name: 'The Snake at the Gate' });
  const add = page.getByRole('button', { name: 'Add the first shelf' });
  await snake.or(add).first().waitFor();
  // An extension that is loaded only temporarily in Firefox comes without texts.
  if (await add.isVisible()) await add.click();
  await snake.click();
  await page.locator('.shelf-notes textarea').waitFor();
}
