/** The browsers in which the tests run. */
export type OneBrowser = 'chromium' | 'firefox';

/** The reasons why a test runs in one browser only. DEVELOPERS.md has the same table, and a test compares the two. */
export const whyOnlyIn = {
  'debugging protocol': 'the test drives the browser by its debugging protocol, which Firefox does not have',
  'pasting by script': 'Firefox gives the page nothing of a paste that a script makes',
  'new tabs and downloads':
    'Firefox tells the driver nothing of tabs that a link opens, nor of files that are saved',
  'frames of other sites': 'Firefox lets the press of the button into frames of other sites',
  'a filter of the root covers the top layer':
    'Firefox lays a filter of the page’s root over what is in the top layer too',
  'events tell of closed roots':
    'Firefox names elements in closed shadow roots to a page (`originalTarget` of events)',
  'two tabs drawn at once':
    'Firefox draws the tab in front alone, so that a panel in a tab beside the page rests',
} as const;
