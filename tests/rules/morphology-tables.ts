import { readHandMade } from '../../src/data/lexicon/read-hand-made.ts';
import { findDerivations } from '../../src/data/morphology/find-derivations.ts';
import { findPrefixes } from '../../src/data/morphology/find-prefix.ts';
import { findSuffixes } from '../../src/data/morphology/find-suffix.ts';
import { type Sounds, soften } from '../../src/data/morphology/match-sound.ts';
import { PREFIX_RULES } from '../../src/data/morphology/prefix-rules.ts';
import { readCorrections } from '../../src/data/morphology/read-corrections.ts';
import { SUFFIX_BASE_RULES } from '../../src/data/morphology/suffix-rules.ts';
import { readCmudict } from '../../src/data/read-cmudict.ts';
import { readCapitalised, readFrequency } from '../../src/data/read-frequency.ts';
import { readWordnet } from '../../src/data/read-wordnet.ts';
import type { RuleTable } from './rule-tables.ts';

/** The rules by which the build of the word table accepts an affix. */
export const morphologyTables: readonly RuleTable[] = [
  {
    title: 'Whether a suffix is one',
    file: 'src/data/morphology/suffix-rules.ts',
    about:
      'For each base that base + suffix could spell and sound like: whether it made the word, by what WordNet and a count of words say.',
    rules: SUFFIX_BASE_RULES,
    run: sayBelieved(findSuffixes, (base, affix) => `${base} + ${affix}`),
  },
  {
    title: 'Whether a prefix is one',
    file: 'src/data/morphology/prefix-rules.ts',
    about: 'The same for prefixes.',
    rules: PREFIX_RULES,
    run: sayBelieved(findPrefixes, (base, affix) => `${affix} + ${base}`),
  },
];

type Facts = Parameters<typeof findSuffixes>[2];
type Found = Parameters<typeof findSuffixes>[3];
type Known = { sounds: Map<string, Sounds[]>; facts: Facts; found: Found };

let known: Known | undefined;

/** Gathers the known words and derivations once, when they are first needed. */
function gather(): Known {
  const words = new Map([...readCmudict(), ...readHandMade().pronunciations]);
  const sounds = new Map([...words].map(([word, readings]) => [word, readings.map(soften)]));
  const facts = { ...readWordnet(), rank: readFrequency(), capitalised: readCapitalised() };
  return { sounds, facts, found: findDerivations(words, facts, readCorrections()) };
}

/** Writes a derivation, for example unhappy = un + happy, and adds `: no` if the rules do not accept the derivation. */
function sayBelieved(
  find: typeof findSuffixes,
  show: (base: string, affix: string) => string,
): (text: string) => string {
  return (text) => {
    known ??= gather();
    const [word = '', making = ''] = text.replace(/: no$/, '').split(' = ');
    const made = find(word, known.sounds, known.facts, known.found);
    const believed = made.some(({ derivation: { base, affix } }) => show(base, affix) === making);
    return `${word} = ${making}${believed ? '' : ': no'}`;
  };
}
