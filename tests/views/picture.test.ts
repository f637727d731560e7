import { beforeEach, describe, expect, test, vi } from 'vitest';
import { loadPassages } from '../../src/host/store/passages-store.ts';
import { PicturePage } from '../../src/pages/picture/picture-page.tsx';
import { PictureFault, type PictureReading } from '../../src/picture/picture-reading.ts';
import { openPage } from './mount-page.ts';
import { screen } from './screen.ts';

/** Results of the reader for pictures. The real reader needs a browser (`tests/e2e/picture.spec.ts`). */
const readings: (() => Promise<PictureReading>)[] = [];
vi.mock('../../src/picture/open-picture-reader.ts', () => ({
  readPicture: () => readings.shift()!(),
}));

/** Makes a reading of lines of words. A word with a question mark after it is unsure. */
function readingOf(...lines: string[]): PictureReading {
  return {
    width: 500,
    height: 300,
    lines: lines.map((line, row) => {
      const top = 20 + row * 30;
      const words = line.split(' ').map((word, n) => ({
        text: word.replace('?', ''),
        box: { left: 20 + n * 50, top, right: 60 + n * 50, bottom: top + 20 },
        sureness: word.endsWith('?') ? 0.2 : 0.96,
        isSure: !word.endsWith('?'),
      }));
      const box = { left: 20, top, right: words.at(-1)!.box.right, bottom: top + 20 };
      return { words, box, size: 20, beginsParagraph: row === 0 };
    }),
  };
}
const give = (...lines: string[]): void => void readings.push(async () => readingOf(...lines));
const choose = (...names: string[]) =>
  screen
    .getByLabel(/^Choose pictures/)
    .setInputFiles(names.map((name) => new File(['picture'], name, { type: 'image/png' })));
const field = () => screen.getByRole('textbox', { name: 'Text' });

beforeEach(async () => {
  readings.length = 0;
  await openPage(PicturePage);
  await screen.getByLabel(/^Choose pictures/).waitFor();
});

describe('a picture of text', () => {
  test('is shown with its text and its figures', async () => {
    give('The dog sat on the mat', 'and a gull ate the fish');
    await choose('Gull.png');
    await screen.getByRole('heading', { name: /% readable/ }).waitFor();
    expect(await field().inputValue()).toBe('The dog sat on the mat and a gull ate the fish');
    expect(await screen.locator('.picture-sheet img').count()).toBe(1);
  });

  test('has words to check, which disappear once they are corrected or confirmed', async () => {
    give('The dog? sat on the lcft? mat');
    await choose('Dog.png');
    await screen.getByRole('heading', { name: '2 words to check' }).waitFor();
    await screen.getByRole('button', { name: '“dog” is right' }).click();
    await screen.getByRole('heading', { name: 'One word to check' }).waitFor();
    await field().fill('The dog sat on the left mat');
    await vi.waitFor(async () => expect(await screen.locator('.picture-checks').count()).toBe(0));
  });

  test('becomes a passage with the corrected text', async () => {
    give('The dog sat');
    await choose('Dog.png');
    await screen.getByRole('button', { name: 'Edit this text' }).waitFor();
    await field().fill('The dogs sat');
    await screen.getByRole('button', { name: 'Edit this text' }).click();
    await vi.waitFor(async () => expect(JSON.stringify(await loadPassages())).toContain('The dogs sat'));
  });

  test('adds its text after the text of an earlier picture, as the teacher has corrected that text', async () => {
    give('The dog sat on the mat all day long');
    await choose('One.png');
    await screen.getByRole('button', { name: 'Edit this text' }).waitFor();
    await field().fill('My dog sat on the mat all day long');
    give('Then a gull ate the fish on the quay');
    await choose('Two.png');
    await vi.waitFor(async () =>
      expect(await field().inputValue()).toBe(
        'My dog sat on the mat all day long\nThen a gull ate the fish on the quay',
      ),
    );
  });

  test('is reported in a sentence if it has no words or cannot be opened', async () => {
    give();
    await choose('Empty.png');
    await screen.getByText('No words were found in this picture.').waitFor();
    readings.push(() => Promise.reject(new PictureFault('notAPicture')));
    await choose('Photo.heic');
    await screen.getByText('The browser cannot open this picture.').waitFor();
  });
});
