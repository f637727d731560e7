import type { DraftTask, DraftTools } from '../../src/rewrite/draft-task.ts';
import { fakeTools } from './rewrite-tools.ts';

/** A task for a story of two people on the dock. */
export const draftTask: DraftTask = {
  people: [
    { name: 'Ines', pronoun: 'she' },
    { name: 'Bram', pronoun: 'he' },
  ],
  place: { name: 'dock', at: 'on' },
  topic: ['crab', 'Marigold'],
  words: ['the', 'and', 'crab', 'net', 'dock'],
  practise: ['crab', 'grab'],
  fewest: 60,
  most: 120,
  longest: 15,
};

/** Tools for a group that reads all words but eight; two words are not fit for children. */
export const draftTools: DraftTools = {
  read: fakeTools.read,
  isFit: (word) => !/^(?:gun|guns|beer)$/.test(word),
  isName: (word) => /^(?:Otto|Wilma|Rose)$/.test(word),
  practises: (word) => /^(?:crabs?|grab|grabs)$/.test(word),
};

/** A draft that passes, by paragraphs; 71 words. */
export const goodParagraphs: readonly string[] = [
  'Ines and Bram were on the dock. Ines had a net. Bram had a bucket. “Look at that big crab!” said Bram.',
  'The crab ran to the end of the dock. It got a grip on the net. “Stop it!” said Ines. But the net fell in the water.',
  'Bram got a long stick. He fished the net out. The crab was still in it. “It will not let go,” said Ines. The two had to grin.',
];

/** The model's answer with these drafts. */
export const draftAnswer = (...drafts: readonly (readonly string[])[]): string =>
  JSON.stringify({ drafts: drafts.map((paragraphs) => ({ title: 'The Crab and the Net', paragraphs })) });
