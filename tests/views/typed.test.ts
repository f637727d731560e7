import type { ComponentType } from 'preact';
import { describe, expect, test } from 'vitest';
import { DeskPage } from '../../src/pages/desk/desk-page.tsx';
import { GroupsPage } from '../../src/pages/groups/groups-page.tsx';
import { LessonPage } from '../../src/pages/lesson/lesson-page.tsx';
import { ShelfPage } from '../../src/pages/shelf/shelf-page.tsx';
import { WelcomePage } from '../../src/pages/welcome/welcome-page.tsx';
import { kept } from '../fakes/local-storage.ts';
import { openPage } from './mount-page.ts';
import { type Found, screen } from './screen.ts';

/**
 * Fields whose text is saved only when the text is used or the field is left. Meanwhile, typed text is noted, so that
 * the next start offers the text. tests/attack checks that a killed browser keeps the typed text.
 */

interface Field {
  readonly Page: ComponentType;
  readonly hash: string;
  /** Shows the field if it is not there at first. */
  readonly show?: () => Promise<unknown>;
  readonly field: () => Found;
}

const label = (name: string | RegExp) =>
  screen.getByLabel(name, typeof name === 'string' ? { exact: true } : {});
const FIELDS: Readonly<Record<string, Field>> = {
  'the topic of a passage': { Page: DeskPage, hash: 'new', field: () => screen.locator('#begin-topic') },
  'a text for the desk': { Page: DeskPage, hash: 'new', field: () => screen.locator('#pasted') },
  'addresses for the shelf': {
    Page: ShelfPage,
    hash: 'add',
    show: () => screen.getByText('Only some of them').click(),
    field: () => screen.locator('textarea'),
  },
  'tags of many texts': { Page: ShelfPage, hash: 'add', field: () => label(/^Tags for all/) },
  'the name of a first group': { Page: WelcomePage, hash: '', field: () => screen.locator('#welcome-name') },
  'the name of a preset': {
    Page: LessonPage,
    hash: 'plovers',
    show: () => screen.getByRole('button', { name: /^Save as preset/ }).click(),
    field: () => label('Name of the preset'),
  },
  'the names of a group': { Page: GroupsPage, hash: 'group/herons', field: () => label('Names') },
  'the name of a group': { Page: GroupsPage, hash: 'group/herons', field: () => label('Group name') },
  'by-sight words of a group': { Page: GroupsPage, hash: 'group/herons', field: () => label(/by-sight/i) },
};

describe('text that was typed and not used yet is there at the next start:', () => {
  test.each(Object.entries(FIELDS))('%s', async (_name, { Page, hash, show, field }) => {
    await openPage(Page, hash);
    await show?.();
    await field().first().waitFor();
    await field().first().fill('nets and ropes');
    const noted = () => [...kept].filter(([key]) => key.startsWith('typed/')).map(([, typed]) => typed);
    await expect.poll(noted).toEqual(['nets and ropes']);
    await openPage(Page, hash);
    await expect.poll(() => field().first().inputValue()).toBe('nets and ropes');
  });
});
