/** Taking a page's text, and where a passage comes from. */
export const passage = {
  notShaded: 'The page is no longer shaded. Go back to it, press the Wordreach button, and take it again.',
  noWords:
    'There are no words in what is checked on the page. Choose “Whole page” in the panel, or select the text.',
  source: 'Source: {source}',
} as const;
