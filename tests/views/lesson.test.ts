import mammoth from 'mammoth';
import { beforeEach, describe, expect, test } from 'vitest';
import { deletePassage, savePassage } from '../../src/host/store/passages-store.ts';
import { LessonPage } from '../../src/pages/lesson/lesson-page.tsx';
import { freePassageId } from '../../src/passage/kept/passage.ts';
import { kept } from '../fakes/local-storage.ts';
import { openPage, saved } from './mount-page.ts';
import { screen } from './screen.ts';

beforeEach(() => open('plovers'));

async function open(hash: string): Promise<void> {
  await openPage(LessonPage, hash);
  await screen.locator('.lesson-part').first().waitFor();
}

const part = (name: string) => screen.getByRole('region', { name, exact: true });
const words = (name: string) => part(name).locator('.lesson-blocks').textContent();
const setNumber = (seed: number) => screen.getByLabel('Version').fill(String(seed));

/** Adds a passage to the desk. */
async function addPassage(title: string, text: string): Promise<string> {
  const { passage } = await savePassage({
    id: freePassageId(),
    title,
    source: { url: null, byline: null, date: null },
    original: text,
    versions: {},
    rev: 0,
    saved: 0,
  });
  return passage.id;
}

describe('a sheet', () => {
  test('is the same for the same number, and different for another number', async () => {
    await setNumber(11);
    const first = await words('Building words');
    await setNumber(12);
    expect(await words('Building words')).not.toBe(first);
    await setNumber(11);
    expect(await words('Building words')).toBe(first);
  });

  test('keeps pinned parts when its number changes, and all parts when the page is opened again', async () => {
    await setNumber(11);
    const pinned = await words('Building words');
    const other = await words('Letter-sound review');
    await part('Building words').getByRole('button', { name: 'Pin' }).click();
    await setNumber(12);
    expect(await words('Building words')).toBe(pinned);
    expect(await words('Letter-sound review')).not.toBe(other);
    await open('plovers');
    expect(await words('Building words')).toBe(pinned);
    expect(await screen.getByLabel('Version').inputValue()).toBe('12');
  });

  test('says for which choice it has fewer items than asked for', async () => {
    expect(await part('Word lists').textContent()).toContain('Made-up words: 0 of 10');
    expect(await part('Dictation').textContent()).not.toContain('Fewer than asked');
  });

  test('can have one part made again without the others', async () => {
    await setNumber(11);
    const building = await words('Building words');
    const letters = await words('Letter-sound review');
    await part('Letter-sound review').getByRole('button', { name: 'Shuffle' }).click();
    expect(await words('Letter-sound review')).not.toBe(letters);
    expect(await words('Building words')).toBe(building);
  });

  test('keeps a pinned part until the part is unpinned', async () => {
    const shuffles = () => part('Building words').getByRole('button', { name: 'Shuffle' }).count();
    expect(shuffles()).toBe(1);
    await part('Building words').getByRole('button', { name: 'Pin' }).click();
    await expect.poll(shuffles).toBe(0);
    await part('Building words').getByRole('button', { name: 'Pin' }).click();
    await expect.poll(shuffles).toBe(1);
  });

  test('keeps the text of the teacher, reports words that cannot be read yet, and undoes the change', async () => {
    const before = await words('Letter-sound review');
    await part('Letter-sound review').getByRole('button', { name: 'Edit' }).click();
    const field = part('Letter-sound review').getByLabel('Word, line 1').first();
    await field.fill('xylophone');
    await expect
      .poll(() => part('Letter-sound review').getByRole('status').textContent())
      .toMatch(/xylophone/);
    await part('Letter-sound review').getByRole('button', { name: 'Done' }).click();
    expect(await words('Letter-sound review')).toContain('xylophone');
    await setNumber(77);
    expect(await words('Letter-sound review')).toContain('xylophone');
    while (screen.getByRole('button', { name: 'Undo' }).isVisible())
      await screen.getByRole('button', { name: 'Undo' }).click();
    expect(await words('Letter-sound review')).toBe(before);
  });

  test('can have a part left out of the paper and put back', async () => {
    await part('Building words').getByRole('button', { name: 'Leave out' }).click();
    await screen.getByRole('button', { name: 'Print…' }).click();
    const paper = screen.locator('.lesson-paper');
    expect(await paper.textContent()).not.toContain('Building words');
    await screen.getByRole('button', { name: 'Back to the lesson' }).click();
    await part('Building words').getByRole('button', { name: 'Put back' }).click();
    await screen.getByRole('button', { name: 'Print…' }).click();
    expect(await paper.textContent()).toContain('Building words');
  });
});

describe('a lesson saved in a file', () => {
  test('as a Word document opens again, with its tables and the words of the key', async () => {
    const built = (await part('Building words').locator('.lesson-blank').first().textContent()).trim();
    await screen.getByLabel(/^Sheet/).selectOption('key');
    await screen.getByRole('button', { name: 'Save for Word' }).click();
    await expect
      .poll(() => saved.map(({ name }) => name))
      .toEqual([expect.stringMatching(/^Lesson.*Plovers\.docx$/)]);
    const buffer = Buffer.from(await saved[0]!.content.arrayBuffer());
    const { value } = await mammoth.convertToHtml({ buffer });
    expect(value).toContain('<table>');
    expect(value).toContain(built);
  });

  test('as plain text has the parts in their order', async () => {
    await screen.getByRole('button', { name: 'Save as plain text' }).click();
    await expect.poll(() => saved).toHaveLength(1);
    const text = await saved[0]!.content.text();
    expect(text.indexOf('LETTER-SOUND REVIEW')).toBeGreaterThanOrEqual(0);
    expect(text.indexOf('BUILDING WORDS')).toBeGreaterThan(text.indexOf('LETTER-SOUND REVIEW'));
  });
});

test('a lesson around a passage has the words of the passage first', async () => {
  const id = await addPassage(
    'The gull',
    'The gull was flapping and hopping and grabbing at the chips on the deck.',
  );
  await open(`plovers/${id}`);
  await part('Building words').getByLabel('Pattern').selectOption('change-double');
  await expect.poll(() => words('Building words')).toMatch(/flapping/);
  expect(await words('Building words')).toMatch(/grabbing/);
});

test('the lesson of a deleted passage is deleted when another lesson is opened', async () => {
  const id = await addPassage('The gull', 'The gull was flapping on the deck.');
  await open(`plovers/${id}`);
  await part('Building words').getByRole('button', { name: 'Pin' }).click();
  const lessons = () => [...kept.keys()].filter((key) => key.startsWith('lesson/'));
  await expect.poll(lessons).toEqual([`lesson/plovers/${id}`]);
  await addPassage('Another', 'Another text, so that the desk is not empty.');
  await deletePassage(id);
  await open('plovers');
  await expect.poll(lessons).toEqual([]);
});

describe('the parts of a lesson', () => {
  const order = () =>
    screen
      .locator('.lesson-parts li label')
      .allTextContents()
      .map((text) => text.trim());
  const openList = () => screen.locator('.lesson-parts summary').click();
  const shown = (name: string) => part(name).count() > 0;

  test('a part that is not on the usual sheet can be added, and stays when the page is opened again', async () => {
    expect(shown('Word sort')).toBe(false);
    await openList();
    await screen
      .locator('.lesson-parts')
      .getByLabel(/^Word sort/)
      .check();
    expect(shown('Word sort')).toBe(true);
    await open('plovers');
    expect(shown('Word sort')).toBe(true);
    await openList();
    await screen
      .locator('.lesson-parts')
      .getByLabel(/^Word sort/)
      .uncheck();
    expect(await part('Word sort').textContent()).toContain('Not on this sheet');
  });

  test('a part is moved by its button', async () => {
    await openList();
    expect(order()[0]).toMatch(/^Letter-sound review/);
    await screen.getByRole('button', { name: 'Move Letter-sound review down' }).click();
    expect(order()[1]).toMatch(/^Letter-sound review/);
    await open('plovers');
    expect(order()[1]).toMatch(/^Letter-sound review/);
  });

  test('a preset puts its parts on the sheet, with their minutes, and undo removes them', async () => {
    await screen.getByLabel('Preset').selectOption('A lesson in one page');
    expect(shown('New pattern')).toBe(true);
    expect(await part('Homophones').textContent()).toContain('Not on this sheet');
    expect(await screen.locator('.lesson-parts summary').textContent()).toContain('25 min in all');
    await screen.getByRole('button', { name: 'Undo' }).click();
    expect(shown('New pattern')).toBe(false);
  });

  test('the teacher’s own preset is saved, used for another group, and deleted', async () => {
    await part('Dictation').getByRole('button', { name: 'Leave out' }).click();
    await screen.getByRole('button', { name: 'Save as preset…' }).click();
    await screen.getByLabel('Name of the preset').fill('Mondays');
    await screen.getByRole('button', { name: 'Save', exact: true }).click();
    await open('herons');
    expect(await part('Dictation').textContent()).not.toContain('Not on this sheet');
    await screen.getByLabel('Preset').selectOption('Mondays');
    expect(await part('Dictation').textContent()).toContain('Not on this sheet');
    await screen.getByRole('button', { name: 'Delete preset “Mondays”' }).click();
    await expect.poll(() => screen.getByLabel('Preset').textContent()).not.toContain('Mondays');
  });

  test('words correct a minute are calculated beside a passage to read', async () => {
    const id = await addPassage(
      'The net',
      'The man had a big net. The net had a rip in it. He sat on the dock.',
    );
    await open(`plovers/${id}`);
    await openList();
    await screen.getByLabel(/^Read it/).check();
    await part('Read it').getByLabel('Errors').fill('2');
    await part('Read it').getByLabel('Seconds').fill('30');
    expect(await part('Read it').textContent()).toContain('32 words correct a minute');
  });

  test('a saved sheet is noted for the group, so that its words come back later', async () => {
    await screen.getByRole('button', { name: 'Save as plain text' }).click();
    await expect.poll(() => kept.get('sheets/plovers')).toHaveLength(1);
    const [sheet] = kept.get('sheets/plovers') as { words: string[] }[];
    expect(sheet!.words.length).toBeGreaterThan(10);
    kept.set('sheets/plovers', [{ ...sheet, day: '2020-01-01' }]);
    await open('plovers');
    await openList();
    await screen
      .locator('.lesson-parts')
      .getByLabel(/^Spaced review/)
      .check();
    expect(await part('Spaced review').textContent()).toContain('days ago');
  });
});
