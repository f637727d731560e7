import { beforeEach, describe, expect, test } from 'vitest';
import { serveSyncCopy } from '../../src/host/sync/sync-copy.ts';
import { GroupsPage } from '../../src/pages/groups/groups-page.tsx';
import { copied, refused } from '../fakes/extension.ts';
import { kept } from '../fakes/local-storage.ts';
import { openPage, saved } from './mount-page.ts';
import { pressKey, screen } from './screen.ts';

beforeEach(open);

async function open(): Promise<void> {
  await openPage(GroupsPage);
  await readable();
}

/** Returns how many of the most common words the group can read, according to the page. */
async function readable(): Promise<number> {
  const sentence = screen.getByText('most common words').locator('strong');
  return Number(await sentence.textContent());
}

const names = () => screen.getByRole('navigation').locator('a[href^="#group"]').allTextContents();
const link = (name: string) => screen.getByRole('link', { name });
const button = (name: string | RegExp) => screen.getByRole('button', { name });
const label = (name: string) => screen.getByLabel(name, { exact: true });

describe('a group', () => {
  test('is added, renamed, copied and deleted, and each change can be undone', async () => {
    await button('New group').click();
    const name = screen.getByLabel('Group name');
    await expect.poll(() => name.inputValue()).toBe('New group');
    await name.fill('  Terns ');
    await name.press('Enter');
    await expect.poll(names).toEqual(['Herons', 'Plovers', 'Terns']);
    await button('Copy').click();
    await expect.poll(names).toEqual(['Herons', 'Plovers', 'Terns', 'Terns (copy)']);
    await link('Herons').click();
    await expect.poll(() => name.inputValue()).toBe('Herons');
    await button('Delete').click();
    await expect.poll(names).toEqual(['Plovers', 'Terns', 'Terns (copy)']);
    expect(await screen.locator('.undo').textContent()).toContain('Deleted Herons.');
    await button('Undo').click();
    await expect.poll(names).toEqual(['Herons', 'Plovers', 'Terns', 'Terns (copy)']);
    await pressKey('Control+z');
    await expect.poll(names).toEqual(['Herons', 'Plovers', 'Terns']);
  });

  test('reads more at a later step, and the words it could read on an earlier day are still known', async () => {
    const before = await readable();
    await screen.getByLabel('Last step taught').selectOption('40');
    await expect.poll(readable).toBeGreaterThan(before);
    await screen.getByRole('heading', { name: 'History' }).waitFor();
    await screen.getByLabel('as of').fill('2020-01-01');
    await expect.poll(readable).toBe(before);
    await open();
    expect(await screen.getByLabel('Last step taught').inputValue()).toBe('40');
  });

  test('is taught American or British English, and takes over the English of a chosen starter', async () => {
    const english = label('English');
    expect(await english.inputValue()).toBe('american');
    expect(screen.getByLabel('The a of bath and grass').count()).toBe(0);
    await english.selectOption('british');
    await screen.getByText('harbour, mum, jumper').waitFor();
    await screen.getByText('Decoding rules').click();
    await screen.getByLabel('The a of bath and grass').selectOption('cat');
    await button('Undo').click();
    await button('Undo').click();
    await expect.poll(() => english.inputValue()).toBe('american');
    await label('Sequence').selectOption('england-2013');
    await expect.poll(() => english.inputValue()).toBe('british');
  });
});

describe('a sequence', () => {
  const titles = () => screen.locator('.step-name').allTextContents();
  const through = (): string => {
    const stored = kept.get('groups') as
      | { groups: { herons: { sequence: string; step: number } } }
      | undefined;
    return stored ? `${stored.groups.herons.sequence} ${stored.groups.herons.step}` : 'as it was';
  };
  const step = (title: string) => screen.locator('.step-row').filter({ hasText: title }).first();

  beforeEach(async () => {
    await link('Adapt its steps').click();
    await screen.getByText('This starter comes with Wordreach and stays as it is.').waitFor();
  });

  test('that is a starter is copied at the first change, and its groups use the copy', async () => {
    await step('Short i, n, f').getByRole('button', { name: 'Move step 3 up' }).click();
    await expect.poll(() => titles()[1]).toBe('Short i, n, f');
    expect(await screen.getByLabel('Sequence name').inputValue()).toBe('Steady steps, ours');
    await expect.poll(through).toBe('steady-steps-ours 24');
    await button('Undo').click();
    await screen.getByText('This starter comes with Wordreach and stays as it is.').waitFor();
    await expect.poll(through).toBe('steady-steps 24');
    expect(titles()[2]).toBe('Short i, n, f');
  });

  test('has notes on repeated words, decodable by-sight words and missing patterns', async () => {
    await step('Short i, n, f').getByRole('button', { expanded: false }).click();
    await label('By-sight words').fill('the fin');
    await screen.getByLabel('Title').focus();
    await screen.getByText('Step 1 already teaches “the” as a by-sight word.').waitFor();
    await screen.getByText('Already decodable at this step: “fin”').waitFor();
    await screen.getByText('patterns not in this sequence').waitFor();
  });

  test('that a teacher makes can be used, copied and deleted', async () => {
    await button('New sequence').click();
    const name = screen.getByLabel('Sequence name');
    await expect.poll(() => name.inputValue()).toBe('New sequence');
    await name.fill('Harbour order');
    await name.press('Enter');
    await screen.locator('[data-act=open]').click();
    await screen.getByLabel('Teaches').fill('mast');
    await screen.getByLabel('Teaches').press('Enter');
    await screen.getByText('m as in mast').first().waitFor();
    await link('Plovers').click();
    await label('Sequence').selectOption('Harbour order');
    await screen.getByText('Taught now: m as in mast').waitFor();
    await link('Harbour order').click();
    await screen.getByText('You can delete it when no group uses it.').waitFor();
    await button('Copy').click();
    await expect.poll(() => name.inputValue()).toBe('Harbour order, ours');
    await button('Delete').click();
    await link('Harbour order, ours').waitFor({ state: 'detached' });
    expect(link('Harbour order').count()).toBe(1);
  });
});

describe('a pasted sequence', () => {
  const plan = [
    'Our phonics plan',
    'Step\tPhonics\tSight words',
    '1\tm, s, t, short a\tthe, a',
    '2\tp, n, short i, d\tis',
    '3\tsh, ch\tthey',
    '4\tsounds of the harbour\tof',
    '5\tow\tsaid',
  ].join('\n');
  const field = screen.getByLabel('Your scope and sequence');

  beforeEach(() => link('Paste a sequence').click());

  test('keeps unread text as a note, and remembers the teacher’s answers to its questions', async () => {
    await field.fill(plan);
    await screen
      .getByRole('group', { name: 'ow' })
      .getByRole('button', { name: 'Nothing to teach here' })
      .click();
    await label('Group').selectOption('None yet');
    await button('Use this sequence').click();
    await screen.getByText('Not understood when pasted: “sounds of the harbour” (step 4).').waitFor();
    await link('Paste a sequence').click();
    expect(await field.inputValue()).toBe(plan);
    await screen.getByRole('group', { name: 'ow' }).getByText('your choice: nothing to teach').waitFor();
  });

  test('lets the teacher change the meaning of a piece that was understood', async () => {
    await field.fill(plan);
    const piece = screen.getByRole('button', { name: 'ch', exact: true });
    await piece.click();
    const settle = screen.getByRole('group', { name: 'ch step' });
    await settle.getByText('ch as in chest').first().waitFor();
    await settle.getByLabel('Teaches').fill('anchor');
    await settle.getByLabel('Teaches').press('Enter');
    await settle.getByRole('button', { name: /chest/ }).click();
    await settle.getByText('your choice').waitFor();
    await screen
      .locator('.pasted-item')
      .filter({ has: piece })
      .getByText('your choice: ch as in anchor')
      .waitFor();
    await settle.getByRole('button', { name: 'Undo my choice' }).click();
    await screen.getByText('ch as in chest').first().waitFor();
  });

  test('from a spreadsheet has its columns confirmed, and its steps titled by the focus column', async () => {
    const foci = [
      ['Short a', 'm, s, t', 'mat'],
      ['Short i', 'p, n, d', 'pin'],
      ['Initial blends', 'bl, cl', 'clap'],
      ['Vowel teams', 'ai, ay', 'rain'],
    ];
    const rows = Array.from({ length: 60 }, (_, i) => {
      const [focus, letters, word] = foci[i % foci.length]!;
      return [Math.floor(i / 10) + 1, i + 1, focus, letters, word, i === 0 ? 'the, a' : ''].join('\t');
    });
    await field.fill(['Unit\tWeek\tFocus\tSpellings\tBits\tSight words', ...rows].join('\n'));
    const kinds = () =>
      screen
        .locator('.column-kinds select')
        .all()
        .map((one) => (one as HTMLSelectElement).value);
    await expect.poll(kinds).toEqual(['notes', 'step', 'title', 'patterns', 'notes', 'by-sight']);
    expect(screen.locator('.column-kinds tbody tr').count()).toBe(4);
    const titles = () => screen.locator('.pasted h3').allTextContents();
    await expect
      .poll(() => titles().slice(0, 3))
      .toEqual(['Week 1 · Short a', 'Week 2 · Short i', 'Week 3 · Initial blends']);
    expect(titles()).toHaveLength(60);

    // The week is not wanted in the titles. The fifth column has examples.
    await label('Week').selectOption('Not used');
    await screen.getByLabel('Bits').selectOption('Examples');
    await expect.poll(() => titles().slice(0, 3)).toEqual(['Short a', 'Short i', 'Initial blends']);
    const blends = screen.locator('.pasted > li').nth(2);
    expect(await blends.textContent()).toContain('bl at the start of a word');
    expect(await blends.textContent()).not.toContain('br at the start of a word');

    // For each pattern that the sequence never teaches, the page lists the words that need it. The page also asks for
    // the step of the group.
    await screen.getByRole('heading', { name: 'Patterns not in this sequence' }).waitFor();
    expect(await screen.locator('.never-taught dd').first().textContent()).toMatch(/^\d+ words:/);
    await label('Group').selectOption('Plovers');
    await screen.getByLabel('Last step taught').selectOption('Step 3: Initial blends');
    await button('Use this sequence').click();
    await screen.getByLabel('Group name').waitFor();
    await expect.poll(() => screen.getByLabel('Last step taught').inputValue()).toBe('3');
  });

  test('that is too long is refused with the reason, and markup in a sequence is not run', async () => {
    await field.fill('ai, '.repeat(60_000));
    await screen.getByText('This is too long for a sequence.').waitFor();
    await field.fill('<b onclick="alert(1)">ai</b> <img src=x onerror=alert(1)>');
    await screen.getByText('How it was read').waitFor();
    expect(screen.locator('main img, main b').count()).toBe(0);
  });
});

test('a full storage is reported in a sentence, and nothing is lost', async () => {
  refused.write = 'Resource::kQuotaBytes quota exceeded';
  await button('New group').click();
  await screen.getByRole('alert').getByText('storage for Wordreach is full').waitFor();
  await screen.getByRole('alert').getByRole('button', { name: 'Close' }).click();
  expect(screen.getByText('storage for Wordreach is full').count()).toBe(0);
  refused.write = null;
  await open();
  expect(await screen.getByLabel('Group name').inputValue()).toBe('Herons');
  expect(names()).not.toContain('New group');
});

describe('a file', () => {
  beforeEach(async () => {
    await link('Adapt its steps').click();
    await button('Move step 3 up').click();
    await link('Steady steps, ours').waitFor();
    await link('Save or open a file').click();
    await screen.getByRole('heading', { name: 'Open a file' }).waitFor();
  });

  test.each([false, true])('has names only if the teacher asks for them: %s', async (wanted) => {
    await screen.getByLabel('Plovers').check();
    await screen.getByLabel('with the names of pupils and places').check(wanted);
    await button('Save the file').click();
    await expect.poll(() => saved).toHaveLength(1);
    const text = await saved[0]!.content.text();
    expect(text).toContain('Plovers');
    expect(text.includes('Wilma')).toBe(wanted);
  });

  test.each([
    ['{"wordreach": 1, "groups": [', 'incomplete'],
    ['{"wordreach": 9}', 'newer version of Wordreach'],
    ['x'.repeat(10_000_000), 'larger than 1 MB'],
    ['{"wordreach": 1, "groups": [{"name": "Terns"}, {"name": "<b>x</b>", "steps": 1}]}', 'groups[1], steps'],
  ])('that is bad changes nothing (%#)', async (text, says) => {
    const everything = () => JSON.stringify([...kept]);
    const before = everything();
    await screen
      .getByLabel('Choose a file, or drop it here')
      .setInputFiles([new File([text], 'plan.json', { type: 'application/json' })]);
    const note = screen.locator('.note-wrong');
    await note.waitFor();
    expect(await note.textContent()).toContain(says);
    expect(await note.textContent()).toContain('Nothing was changed.');
    expect(everything()).toBe(before);
  });

  test('is not needed for other browsers of an account if the teacher turns on the copies', async () => {
    // The background makes the copies.
    serveSyncCopy();
    const keys = () => [...copied.keys()].sort();
    expect(keys()).toEqual([]);
    await screen.getByLabel('Copy groups and sequences to my browser account').check();
    await expect.poll(keys).toEqual(['group:herons', 'group:plovers', 'sequence:steady-steps-ours']);
    await link('Plovers').click();
    await button('Copy').click();
    await expect.poll(keys).toContain('group:group-1');
  });
});
