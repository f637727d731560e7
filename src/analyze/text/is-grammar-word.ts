import { wordSet } from './word-set.ts';

/**
 * Returns whether a lower-case word is a word of grammar: the, then, isn't. Returns false for will, may and others that
 * may also be names of people.
 */
export function isGrammarWord(word: string): boolean {
  const end = word.indexOf("'");
  return WORDS.has(end === -1 ? word : word.slice(0, end));
}

const WORDS = wordSet(
  'a an the this that these those i me my we us our you your he him his she her it its they them their and but ' +
    'or so if as because while when where what who whose which why how then there here in on at to of for by with ' +
    'from into onto after before until over under up down off out is isn are aren was wasn were weren be been am ' +
    'do don does doesn did didn has hasn have haven had hadn can could couldn would wouldn should shouldn must ' +
    'not no yes all some any every each one two more most very just now let',
);
