import { h } from 'preact';
import { beforeEach, expect, test, vi } from 'vitest';
import { loadGroups } from '../../src/host/store/groups-store.ts';
import { VarietyNote } from '../../src/pages/desk/variety-note.tsx';
import { WelcomePage } from '../../src/pages/welcome/welcome-page.tsx';
import { openPage } from './mount-page.ts';
import { screen } from './screen.ts';

const onEdit = vi.fn();
beforeEach(() => onEdit.mockReset());

test('one press changes all British spellings of a text, and British words are offered separately', async () => {
  const text = 'Mum saw the Harbour.\nThe harbour was grey. A jumper!';
  await openPage(() => h(VarietyNote, { text, accent: 'american', onEdit }));
  const spelling = screen.getByRole('region', { name: 'British spelling: 4 words' });
  expect(await spelling.textContent()).toContain('mum → mom, harbour → harbor, grey → gray');
  expect(await screen.getByRole('region', { name: 'British words: 1' }).textContent()).toContain(
    'jumper → sweater',
  );
  await spelling.getByRole('button', { name: 'Change to American' }).click();
  expect(onEdit).toHaveBeenCalledTimes(1);
  expect(onEdit).toHaveBeenCalledWith([
    { from: 0, to: 3, text: 'Mom' },
    { from: 12, to: 19, text: 'Harbor' },
    { from: 25, to: 32, text: 'harbor' },
    { from: 37, to: 41, text: 'gray' },
  ]);
});

test('a text in the group’s own English gets no offers', async () => {
  await openPage(() =>
    h('div', {}, [h(VarietyNote, { text: 'Mum saw the grey harbour.', accent: 'british', onEdit })]),
  );
  expect(screen.getByRole('button', { name: 'Change to British' }).count()).toBe(0);
});

test('the first page says which English a starter is for, and a new group gets the chosen English', async () => {
  await openPage(WelcomePage);
  await screen.getByLabel('Group name').waitFor();
  expect(screen.getByText('American or British English').count()).toBe(2);
  const english = screen.getByLabel('English', { exact: true });
  expect(await english.inputValue()).toBe('american');
  await screen.getByLabel(/England/).click();
  await expect.poll(() => english.inputValue()).toBe('british');
  await screen.getByLabel('Group name').fill('Terns');
  await screen.getByLabel('Or, instead of a row: last step taught').selectOption('4');
  await screen.getByRole('button', { name: 'Save group and open story' }).click();
  await expect
    .poll(async () => Object.values((await loadGroups()).groups).find(({ name }) => name === 'Terns')?.accent)
    .toBe('british');
});
