import { expect, test } from 'vitest';
import { explainClosedPage, explainEmptyText, explainRefusal } from './explain-closed-page.ts';

test.each([
  ['https://chromewebstore.google.com/detail/x', /store/],
  ['https://addons.mozilla.org/en-US/firefox/', /store/],
  ['https://harbour.example/news/tides.pdf', /PDF/],
  ['https://harbour.example/news/TIDES.PDF?page=2#top', /PDF/],
  ['file:///home/ines/story.html', /file URLs/],
  ['chrome://settings/', /browser itself/],
  ['about:addons', /browser itself/],
  ['about:reader?url=https%3A%2F%2Fharbour.example%2F', /Leave the reader view/],
  ['view-source:https://harbour.example/', /browser itself/],
])('the page %s cannot be shaded, and the sentence says why', (url, why) => {
  expect(explainClosedPage(url)).toMatch(why);
});

test.each([
  'https://harbour.example/story',
  'http://127.0.0.1:8080/',
  'https://harbour.example/pdf/about',
  'https://harbour.example/find?file=tides.pdf',
  'https://chromewebstore.google.com.harbour.example/',
  '',
  undefined,
])('the page %s is not reported as closed to shading', (url) => {
  expect(explainClosedPage(url)).toBeNull();
});

// The messages of Chromium 156, obtained by pressing the button on each kind of page.
test.each([
  ['Cannot access a chrome:// URL', /browser itself/],
  ['The extensions gallery cannot be scripted.', /store/],
  ['Frame with ID 0 is showing error page', /did not load/],
])('the browser’s refusal “%s” is explained', (message, why) => {
  expect(explainRefusal(new Error(message))).toMatch(why);
});

test('a refusal because the button was not clicked does not mean that the page is closed', () => {
  const message =
    'Cannot access contents of the page. Extension manifest must request permission to access the respective host.';
  expect(explainRefusal(new Error(message))).toBeNull();
  expect(explainRefusal(new Error('Missing host permission for the tab'))).toBeNull();
});

test.each([
  ['https://harbour.example/', 'page', null, /no words to read/],
  ['https://harbour.example/tides.pdf', 'page', null, /PDF/],
  ['https://harbour.example/edit', 'page', 'canvas', /draws its letters/],
  ['https://harbour.example/scan', 'page', 'picture', /picture/],
  ['https://harbour.example/', 'selection', 'picture', /selection/],
] as const)('a text without words is explained: %s (%s, %s)', (url, scope, drawn, says) => {
  expect(explainEmptyText({ url, scope, drawn })).toMatch(says);
});
