import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Copy, reconcile } from './reconcile.ts';

const known = { a: { changed: 5, text: 'old' } };

test.each<[string, Record<string, string>, Record<string, Copy>, object]>([
  ['nothing new', { a: 'old' }, known, { toHere: {}, toThere: {}, beside: {} }],
  ['changed here', { a: 'new' }, known, { toHere: {}, toThere: { a: { changed: 9, text: 'new' } } }],
  ['changed there', { a: 'old' }, { a: { changed: 7, text: 'new' } }, { toHere: { a: 'new' }, toThere: {} }],
  [
    'changed alike',
    { a: 'new' },
    { a: { changed: 7, text: 'new' } },
    { toHere: {}, toThere: {}, beside: {} },
  ],
  [
    'changed in both',
    { a: 'ours' },
    { a: { changed: 7, text: 'theirs' } },
    { toHere: { a: 'theirs' }, toThere: {}, beside: { a: 'ours' } },
  ],
  ['deleted here', {}, known, { toThere: { a: { changed: 9, text: null } } }],
  ['deleted there', { a: 'old' }, { a: { changed: 7, text: null } }, { toHere: { a: null }, beside: {} }],
  [
    'deleted there, changed here',
    { a: 'new' },
    { a: { changed: 7, text: null } },
    { toHere: {}, toThere: { a: { changed: 9, text: 'new' } } },
  ],
  [
    'deleted here, changed there',
    {},
    { a: { changed: 7, text: 'new' } },
    { toHere: { a: 'new' }, beside: {} },
  ],
  [
    'an older copy in the account',
    { a: 'old' },
    { a: { changed: 3, text: 'older' } },
    { toHere: {}, toThere: {}, known },
  ],
  [
    'changed here, where the clock is behind',
    { a: 'new' },
    { a: { changed: 20, text: 'old' } },
    { toHere: {}, toThere: { a: { changed: 21, text: 'new' } } },
  ],
  ['gone from the account', { a: 'old' }, {}, { toHere: {}, toThere: {} }],
])('two copies are reconciled: %s', (_, here, there, wanted) => {
  expect(reconcile(here, there, known, 9)).toMatchObject(wanted);
});

const text = fc.option(fc.constantFrom('x', 'y', 'z'), { nil: undefined });

test('two browsers end with the same items after any changes in each, and no text is lost', () => {
  fc.assert(
    fc.property(
      fc.array(fc.record({ browser: fc.nat(1), text, skips: fc.boolean() }), { maxLength: 12 }),
      (steps) => {
        let account: Record<string, Copy> = {};
        const browsers = [0, 1].map(() => ({
          here: {} as Record<string, string>,
          known: {} as Record<string, Copy>,
        }));
        let now = 0;
        let n = 0;
        const meet = (browser: (typeof browsers)[number]): void => {
          const done = reconcile(browser.here, account, browser.known, ++now);
          for (const [key, taken] of Object.entries(done.toHere)) {
            if (taken === null) delete browser.here[key];
            else browser.here[key] = taken;
          }
          for (const ours of Object.values(done.beside)) browser.here[`beside-${++n}`] = ours;
          account = { ...account, ...done.toThere };
          browser.known = { ...done.known };
        };
        for (const { browser, text, skips } of steps) {
          const at = browsers[browser]!;
          if (text === undefined) delete at.here.a;
          else at.here.a = text;
          if (!skips) meet(at);
        }
        const last = browsers.map(({ here }) => here.a).filter((kept) => kept !== undefined);
        for (let i = 0; i < 4; i++) browsers.forEach(meet);
        expect(browsers[0]!.here).toEqual(browsers[1]!.here);
        const kept = Object.values(browsers[0]!.here);
        // Text may be lost only if the other browser has since taken it over or deleted it.
        if (steps.every(({ skips }) => skips)) expect(kept).toEqual(expect.arrayContaining(last));
      },
    ),
    { seed: 11, numRuns: 500 },
  );
});
