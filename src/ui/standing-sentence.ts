import type { Standing } from '../analyze/types.ts';

const SENTENCES: Readonly<Record<Standing, string>> = {
  reads: 'The group can decode it.',
  fresh: 'The group can decode it, and it practises this step.',
  'by-sight': 'Taught as a whole word.',
  name: 'Taken for a name; names are not counted.',
  unsure: 'It depends: look at it yourself.',
  beyond: 'Not yet decodable.',
  skipped: 'Left out of the count.',
};

/** What a word's standing means for the group, in one sentence. */
export function standingSentence(standing: Standing): string {
  return SENTENCES[standing];
}
