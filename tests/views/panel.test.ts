import { beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { serveBackground } from '../../src/host/background/serve-background.ts';
import type { Question } from '../../src/host/page-talk/messages.ts';
import { Panel } from '../../src/pages/panel/panel.tsx';
import { ReportPage } from '../../src/pages/report/report-page.tsx';
import { pages, tabs } from '../fakes/extension.ts';
import { kept } from '../fakes/local-storage.ts';
import { openPage } from './mount-page.ts';
import { screen } from './screen.ts';
import { readStory, shadeTab } from './shaded-tab.ts';

const story = await readStory();
let asked: Question[];

beforeAll(() => serveBackground());
beforeEach(() => {
  ({ asked } = shadeTab(7, story.title, story.text));
});

const figure = () => screen.locator('.reach-figure').textContent();
const reach = async () => Number.parseFloat(await figure());
const chosen = () => {
  const { chosen, groups } = kept.get('groups') as {
    chosen: string;
    groups: Record<string, { options: object; alsoTaught: string[] }>;
  };
  return groups[chosen]!;
};
const open = async () => {
  await openPage(Panel);
  await screen.locator('.reach').waitFor();
  openFolds();
};

/** Opens the group's line, and the missing patterns of later steps. */
function openFolds(): void {
  const folds = document.querySelectorAll<HTMLDetailsElement>('.group > details, .missing > details');
  for (const fold of folds) fold.open = true;
  const more = document.querySelectorAll<HTMLElement>(
    '.missing > details .gap-rows > [aria-expanded="false"]',
  );
  for (const button of more) button.click();
}

describe('the panel for the bundled story', () => {
  beforeEach(open);

  test('shows the reach of the page in front, under the title of that page', async () => {
    expect(await screen.locator('.page-title').textContent()).toBe('The Night the Lamp Went Out');
    expect(await reach()).toBeGreaterThan(70);
  });

  test('a pattern ticked as taught raises the reach, and can be unticked again', async () => {
    const before = await reach();
    await screen.getByRole('listitem').filter({ hasText: 'igh as in light' }).getByRole('checkbox').click();
    await screen.getByRole('heading', { name: 'Taught early' }).waitFor();
    await expect.poll(reach).toBeGreaterThan(before);
    expect(chosen().alsoTaught).toHaveLength(1);
    await screen.getByRole('region', { name: 'Taught early' }).getByRole('checkbox').click();
    await expect.poll(reach).toBe(before);
    expect(chosen().alsoTaught).toEqual([]);
    // The row stays, unticked, and keeps the keyboard focus.
    expect(document.activeElement?.localName).toBe('input');
  });

  test('a word is split into its parts, and each press asks the page to show its next place', async () => {
    await screen.getByRole('button', { name: 'winding', exact: true }).first().click();
    const card = screen.getByRole('region', { name: 'The word winding' });
    await card.waitFor();
    expect(card.locator('.unit-letters').allTextContents()).toEqual(['w', 'i', 'n', 'd', 'ing']);
    expect(await card.textContent()).toContain('wind + ing');
    await card.getByRole('button', { name: 'close' }).press('Escape');
    await card.waitFor({ state: 'detached' });
    expect(document.activeElement?.textContent).toBe('winding');
    await screen.getByRole('button', { name: 'winding', exact: true }).first().click();
    // This word has only one place, so the second place is the first again.
    const places = () => asked.filter(({ ask }) => ask === 'goTo').map(({ given }) => given);
    await expect.poll(places).toEqual([
      { key: 'winding', n: 0 },
      { key: 'winding', n: 1 },
      { key: 'winding', n: 0 },
    ]);
  });

  test('an irregular word shows its irregular part', async () => {
    await screen.getByRole('button', { name: 'should', exact: true }).first().click();
    const card = screen.getByRole('region', { name: 'The word should' });
    await card.waitFor();
    expect(await card.textContent()).toContain('irregular part: the oul says o\u035Do');
  });

  test('an option of the group is saved', async () => {
    await screen.getByText('Decoding rules').click();
    const weak = screen.getByLabel('Schwa (the a in about)');
    expect(await weak.inputValue()).toBe('flex');
    await weak.selectOption('strict');
    await expect.poll(() => kept.has('groups') && chosen().options).toMatchObject({ schwa: 'strict' });
    await screen.getByLabel('syllable types of longer words must be taught').check();
    await expect.poll(() => chosen().options).toMatchObject({ schwa: 'strict', syllableTypes: 'counted' });
    await open();
    await screen.getByText('Decoding rules').click();
    expect(await weak.inputValue()).toBe('strict');
    expect(await screen.getByLabel('syllable types of longer words must be taught').isChecked()).toBe(true);
  });

  test('a page that is saved to the shelf twice is there only once', async () => {
    await screen.getByRole('button', { name: 'Save to shelf' }).click();
    await screen.getByText('Saved to the shelf.').waitFor();
    await screen.getByRole('button', { name: 'Save to shelf' }).click();
    await screen.getByText('Already on the shelf.').waitFor();
  });

  test('a change is reported, and Undo takes it back', async () => {
    const before = await reach();
    await screen.getByRole('listitem').filter({ hasText: 'igh as in light' }).getByRole('checkbox').click();
    await screen.getByText('Marked as taught: igh as in light.').waitFor();
    await screen.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(reach).toBe(before);
    expect(chosen().alsoTaught).toEqual([]);
  });

  test("the teacher's choice for a word decides how it counts, and only one choice applies at a time", async () => {
    await screen.getByRole('button', { name: 'should', exact: true }).first().click();
    const before = ['boat', 'sea', 'school'];
    const as = (name: string) => screen.getByRole('radio', { name });
    await as('by-sight word').click();
    await expect.poll(() => kept.has('groups') && chosen()).toMatchObject({ bySight: [...before, 'should'] });
    await screen.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(chosen).toMatchObject({ bySight: before });
  });

  test('each step in the climb of the report has the reach that the panel shows at that step', async () => {
    const reaches = new Map<number, number>();
    for (const step of [0, 1, 37, 75]) {
      await screen.getByRole('slider').fill(String(step));
      await screen.getByRole('button', { name: `to step ${step}` }).click();
      await expect.poll(() => screen.locator('.step-count').textContent()).toContain(`Step ${step}`);
      await expect
        .poll(() => (kept.get('groups') as { groups: { herons: { step: number } } })?.groups.herons.step)
        .toBe(step);
      await open();
      reaches.set(step, await reach());
    }
    await openPage(ReportPage, 'tab/7');
    await screen.locator('.climb-plot').waitFor();
    const rows = screen
      .locator('.climb-table tbody tr')
      .all()
      .map((row) => [...row.querySelectorAll('td')].map((cell) => cell.firstChild!.textContent));
    expect(rows).toHaveLength(76);
    for (const [step, says] of reaches) expect(Number.parseFloat(rows[step]![2]!)).toBe(says);
  });
});

describe('the panel for other pages', () => {
  const sentence = async (): Promise<string> => {
    await openPage(Panel);
    const note = screen.locator('.note').filter({ hasNotText: 'Reading the page' });
    await note.waitFor();
    return note.textContent();
  };

  test('asks for a press of the button if the button was not pressed yet', async () => {
    pages.clear();
    expect(await sentence()).toContain('press the Wordreach button');
  });

  test('says that a page of the browser cannot be read', async () => {
    pages.clear();
    tabs[0]!.url = 'chrome://version/';
    expect(await sentence()).toContain('a page of the browser itself');
  });

  test.each([
    ['is empty', '12 + 30', 'no words to read'],
    ['can all be read', 'Bram sat on a rock.', 'can read every word'],
  ])('says that a page %s', async (_, text, says) => {
    tabs.length = 0;
    shadeTab(8, 'Other', text);
    expect(await sentence()).toContain(says);
  });
});
