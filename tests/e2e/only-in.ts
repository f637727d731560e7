/** Browsers the tests run in. */
export type OneBrowser = 'chromium' | 'firefox';

/** What one browser alone can do, and what is done instead for the other. DEVELOPERS.md lists them too; a test compares the two. */
export const whyOnlyIn = {
  chromium: {
    'debugging protocol':
      'the test drives the browser by its debugging protocol, which Firefox does not have',
  },
  firefox: {},
} as const satisfies Record<OneBrowser, Readonly<Record<string, string>>>;
