import { h } from 'preact';
import { expect, test, vi } from 'vitest';
import { serveBackground } from '../../src/host/background/serve-background.ts';
import { DeskPage } from '../../src/pages/desk/desk-page.tsx';
import { TakeView } from '../../src/pages/desk/take-view.tsx';
import { pages } from '../fakes/extension.ts';
import { openPage } from './mount-page.ts';
import { screen } from './screen.ts';
import { shadeTab } from './shaded-tab.ts';

/** Takes the page of a tab to the desk. Returns the notes that the desk gets, once the passage is open. */
async function take(pictures: number): Promise<string[]> {
  shadeTab(5, 'Nets', 'Bram has a net.', pictures);
  const onNote = vi.fn<(id: string, says: string) => void>();
  await openPage(() => h(TakeView, { tab: 5, swap: null, onNote }), 'take/5');
  await expect.poll(() => location.hash).toMatch(/^#passage\//);
  const id = location.hash.slice('#passage/'.length);
  for (const [of] of onNote.mock.calls) expect(of).toBe(id);
  return onNote.mock.calls.map(([, says]) => says);
}

test.each([
  [0, []],
  [1, ['One picture was left out.']],
  [3, ['3 pictures were left out.']],
])(
  'for a page taken with %i pictures, the desk notes the omitted pictures, if there are any',
  async (pictures, notes) => {
    expect(await take(pictures)).toEqual(notes);
  },
);

test('a page that is already on the desk is opened without a note', async () => {
  expect(await take(3)).toHaveLength(1);
  const first = location.hash;
  pages.clear();
  expect(await take(3)).toEqual([]);
  expect(location.hash).toBe(first);
});

test('an empty file is reported in a sentence, and no page for PDFs is offered', async () => {
  serveBackground();
  await openPage(DeskPage);
  await screen.getByLabel('Choose a text').setInputFiles([new File([''], 'empty.txt')]);
  await screen.locator('.note-wrong').filter({ hasText: 'This file is empty' }).waitFor();
  expect(screen.getByRole('link', { name: 'Open a PDF file' }).count()).toBe(0);
});
