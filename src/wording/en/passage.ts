import { names } from '../names.ts';

/** Texts about taking the text of a page, and about the source of a passage. */
export const passage = {
  notShaded: `The page is no longer shaded. Go back to it, press the Wordreach button, then press “${names.editText.en}”.`,
  noWords:
    'The checked part of this page has no words. Choose “Whole page” in the panel, or select the text.',
  source: 'Source: {source}',
} as const;
