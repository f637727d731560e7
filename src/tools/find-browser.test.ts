import { expect, test } from 'vitest';
import { findChromium, NoBrowser } from './find-browser.ts';

const nothing = { platform: 'linux', env: {}, exists: () => false, download: () => null } as const;

test('the browser named by the CHROMIUM variable comes first', () => {
  expect(findChromium({ ...nothing, env: { CHROMIUM: '/own/chromium' }, exists: () => true })).toBe(
    '/own/chromium',
  );
});

test('the CHROME_PATH variable that other tools use is read too', () => {
  const env = { CHROME_PATH: '/own/chrome' };
  expect(findChromium({ ...nothing, env, exists: () => true })).toBe('/own/chrome');
});

test('on Windows the usual places are searched under each root', () => {
  const env = { PROGRAMFILES: '/programs' };
  const exists = (path: string) => /programs.Google.Chrome.Application.chrome\.exe$/.test(path);
  expect(findChromium({ ...nothing, platform: 'win32', env, exists })).toMatch(/chrome\.exe$/);
});

test('a variable with a path that does not exist is reported', () => {
  expect(() => findChromium({ ...nothing, env: { CHROMIUM: '/own/chromium' } })).toThrow(
    /CHROMIUM is set to \/own\/chromium/,
  );
});

test('the usual places are searched when no variable is set', () => {
  expect(findChromium({ ...nothing, exists: (path) => path === '/snap/bin/chromium' })).toBe(
    '/snap/bin/chromium',
  );
});

test('a downloaded Chromium is the last choice, if it still exists', () => {
  const download = () => '/cache/chrome';
  expect(findChromium({ ...nothing, download, exists: (path) => path === '/cache/chrome' })).toBe(
    '/cache/chrome',
  );
  expect(() => findChromium({ ...nothing, download })).toThrow(NoBrowser);
});

test('without a browser, the error tells how to get one', () => {
  expect(() => findChromium(nothing)).toThrow(/apt install chromium/);
});
