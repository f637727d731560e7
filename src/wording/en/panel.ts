/** The side panel. */
export const panel = {
  readingThePage: 'Reading the page…',
  notShaded: 'This page is not shaded.',
  shadeThisPage: 'Shade this page',
  openAStory:
    'Open a story on the web, then press the Wordreach button in the toolbar: it may read a page only when you do.',
  deference:
    'Wordreach estimates what can be decoded; it does not assess a child. Your school’s programme and your own judgement come first.',
} as const;
