import { beforeAll, describe, expect, test } from 'vitest';
import { serveBackground } from '../../src/host/background/serve-background.ts';
import { changeGroups } from '../../src/host/store/groups-store.ts';
import { savePassage } from '../../src/host/store/passages-store.ts';
import { ReportPage } from '../../src/pages/report/report-page.tsx';
import { freePassageId } from '../../src/passage/kept/passage.ts';
import { kept } from '../fakes/local-storage.ts';
import { openPage } from './mount-page.ts';
import { screen } from './screen.ts';
import { readStory, shadeTab } from './shaded-tab.ts';

const story = await readStory();

beforeAll(() => serveBackground());

async function open(): Promise<void> {
  shadeTab(7, story.title, story.text);
  await openPage(ReportPage, 'tab/7');
  await screen.locator('.climb-plot').waitFor();
}

const reach = () => screen.locator('.reach-figure').textContent();

describe('the report on a page', () => {
  test('has the climb of the reach, the gaps and the words', async () => {
    await open();
    const title = screen.getByRole('article').getByRole('heading', { level: 1 });
    expect(await title.textContent()).toBe('The Night the Lamp Went Out');
    const says = screen.locator('.climb-says li').allTextContents()[0]!;
    expect(says).toContain(`At step 24, ${await reach()} is readable.`);
    expect(says).toMatch(/95% will be readable from step \d+ \(/);
    expect(screen.locator('.report-gaps h3').allTextContents()).toContain('igh as in light');
    expect(await screen.locator('.report-standing').first().textContent()).toContain('light');
  });

  test('follows its group to another step', async () => {
    await open();
    const rows = screen
      .locator('.climb-table tbody tr')
      .all()
      .map((row) => [...row.querySelectorAll('td')].map((cell) => cell.firstChild!.textContent));
    for (const step of [0, 37]) {
      await changeGroups((all) => ({
        ...all,
        groups: { ...all.groups, herons: { ...all.groups.herons!, step } },
      }));
      await screen.getByText(step === 0 ? 'Before the first step,' : `At step ${step},`).waitFor();
      expect(Number.parseFloat(await reach())).toBe(Number.parseFloat(rows[step]![2]!));
    }
  });

  test('has other groups beside its own, each with its line, name and column', async () => {
    await open();
    await screen.getByRole('checkbox', { name: 'Plovers' }).check();
    expect(screen.locator('.climb-lines .climb-line').count()).toBe(2);
    const namesOf = () =>
      screen
        .locator('.climb-name')
        .allTextContents()
        .map((name) => name.trim());
    expect(namesOf()).toEqual([
      expect.stringMatching(/^Herons \d+\.\d%$/),
      expect.stringMatching(/^Plovers \d+\.\d%$/),
    ]);
    await screen.getByText('All steps, as table').click();
    expect(screen.locator('.climb-table thead th').allTextContents()).toEqual([
      'Step',
      'Teaches',
      'Herons',
      'Plovers',
    ]);
    await screen.getByLabel('Group', { exact: true }).selectOption('Plovers');
    await screen.getByText('Group Plovers, step 50').waitFor();
    expect(namesOf()[0]).toMatch(/^Plovers/);
  });

  test('tells how many names a group has, but not the names', async () => {
    const group = { name: 'Terns', sequence: null, step: 0, alsoTaught: [], notYet: [], bySight: ['the'] };
    kept.set('groups', {
      version: 1,
      chosen: 'terns',
      groups: { terns: { ...group, names: ['Hesper', 'Corentin'], options: {} } },
    });
    shadeTab(7, story.title, story.text);
    await openPage(ReportPage, 'tab/7');
    await screen.getByText('Group settings').click();
    await screen.getByText('2 (kept private)').waitFor();
    await screen.getByText('Terns: this group has no sequence, so there are no steps to show.').waitFor();
    expect(document.body.textContent).not.toMatch(/Hesper|Corentin/);
  });
});

test('the report on a passage is about the version of the group, with its story words', async () => {
  const text = '# The ferry is late\nBram purchased a lantern and went to the shed.';
  const save = (storyWords: readonly { word: string; meaning: string }[], version: string, rev: number) =>
    savePassage({
      id: freePassageId(),
      title: 'The ferry is late',
      source: { url: null, byline: null, date: null },
      original: text,
      versions: { herons: { text: version, storyWords } },
      rev,
      saved: 0,
    });
  const openFor = async (id: string): Promise<void> => {
    await openPage(ReportPage, `passage/${id}/herons`);
    await screen.locator('.climb-plot').waitFor();
  };
  const { passage: plain } = await save([], text, 0);
  await openFor(plain.id);
  const before = await reach();
  const { passage } = await save([{ word: 'lantern', meaning: '' }], text, 0);
  await openFor(passage.id);
  expect(await reach()).not.toBe(before);
  expect(await screen.locator('.report-settings').textContent()).toContain('Words to pre-teachlantern');
  expect(await screen.locator('.climb-name').textContent()).toContain(await reach());
  expect(screen.getByText('Original text.').count()).toBe(1);

  // A change saved in another window appears in the open report.
  const here = await reach();
  await savePassage({
    ...passage,
    versions: { herons: { ...passage.versions.herons!, text: `${text} Bram ran.` } },
  });
  await screen.getByText('Text adapted for Herons.').waitFor();
  expect(await reach()).not.toBe(here);
});

test.each([
  ['', 'Choose a text first'],
  ['passage/gone/herons', 'This passage no longer exists'],
  ['shelf/gone', 'This text is no longer on the shelf'],
  ['tab/9', 'The page is no longer shaded. Go back to it'],
])('without a text at #%s the report says where to get one', async (hash, says) => {
  await openPage(ReportPage, hash);
  await screen.getByText(says).waitFor();
});
