import { readFileSync } from 'node:fs';
import { ADVERB_RULES, adverbAt, DEGREE_RULES, mayGo } from '../../src/shorten/adverb-rules.ts';
import { KIND_RULES, kindOf, placeOf } from '../../src/shorten/kind-rules.ts';
import { readWords } from '../../src/shorten/read-words.ts';
import { cutWords, openSwaps } from '../../src/swap/index.ts';
import type { RuleTable } from './rule-tables.ts';

const swaps = openSwaps(readFileSync(new URL('../../public/data/swaps.bin', import.meta.url)));

/** The lists of rules by which a sentence is made shorter. */
export const shortenTables: readonly RuleTable[] = [
  {
    title: 'What a word is in a sentence that is made shorter',
    file: 'src/shorten/kind-rules.ts',
    about: 'For the words that need no parts of speech.',
    rules: KIND_RULES,
    run: sayKind,
  },
  {
    title: 'Whether a degree word may be left out',
    file: 'src/shorten/adverb-rules.ts',
    about: 'For each very, extremely and the like.',
    rules: DEGREE_RULES,
    run: weighAdverb,
  },
  {
    title: 'Whether an adverb in -ly may be left out',
    file: 'src/shorten/adverb-rules.ts',
    about: 'For each but those that say much, as hardly does.',
    rules: ADVERB_RULES,
    run: weighAdverb,
  },
];

/** Asks for the kind of the word between asterisks. Returns the sentence unchanged. */
function sayKind(text: string): string {
  const { sentence, start } = readMarked(text);
  const pieces = cutWords(sentence);
  const at = pieces.findIndex((piece) => piece.start === start);
  kindOf(placeOf(sentence, pieces, at, at === 0), pieces, at, swaps);
  return text;
}

/** Asks whether the adverb between asterisks may be removed. Returns the sentence unchanged. */
function weighAdverb(text: string): string {
  const { sentence, start } = readMarked(text);
  const words = readWords(sentence, swaps);
  const place = adverbAt(
    words,
    words.findIndex((word) => word.start === start),
  );
  if (place === null) throw new Error(`“${text}” has no adverb between its asterisks`);
  mayGo(place);
  return text;
}

function readMarked(text: string): { sentence: string; start: number } {
  return { sentence: text.replaceAll('*', ''), start: text.indexOf('*') };
}
