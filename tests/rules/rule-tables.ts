import { createBritish } from '../../src/analyze/accent/british.ts';
import { BRITISH_RULES, toBritish } from '../../src/analyze/accent/british-rules.ts';
import { hearBritish } from '../../src/analyze/accent/british-sounds.ts';
import { spellingsOf } from '../../src/analyze/build/built-word.ts';
import { catalogue } from '../../src/analyze/catalogue/catalogue.ts';
import { readContext } from '../../src/analyze/homographs/read-context.ts';
import { readingRules, settleByRule } from '../../src/analyze/homographs/settle-by-rule.ts';
import { createAnalyzer } from '../../src/analyze/index.ts';
import { addSuffix, SUFFIX_RULES } from '../../src/analyze/morphology/add-suffix.ts';
import { changeBetween, STEM_RULES } from '../../src/analyze/morphology/restore-stem.ts';
import { PATTERN_RULES } from '../../src/analyze/patterns/name-pattern.ts';
import type { Rule } from '../../src/analyze/rule.ts';
import { FOLLOW_RULES, readKnown } from '../../src/analyze/standing/follow-rules.ts';
import { bitsOf } from '../../src/analyze/standing/pattern-bits.ts';
import { TYPE_RULES } from '../../src/analyze/syllables/classify-syllable.ts';
import { CUT_RULES } from '../../src/analyze/syllables/cut-rules.ts';
import type { Reading } from '../../src/analyze/types.ts';
import { cleanPronunciation, PHONE_RULES } from '../../src/data/lexicon/clean-pronunciation.ts';
import { BREAK_RULES } from '../../src/lesson/smooth-reading/break-rules.ts';
import { cutPhrases } from '../../src/lesson/smooth-reading/cut-phrases.ts';
import { loadGuesser, loadLexicon } from '../load-analyzer.ts';
import { morphologyTables } from './morphology-tables.ts';
import { shortenTables } from './shorten-tables.ts';

/** An ordered list of rules, with the facts about the list that tests and the page of rules need. */
export interface RuleTable {
  readonly title: string;
  /** The path of the file that holds the list, from the root of the repository. */
  readonly file: string;
  /** Text for the page of rules. It explains the decision of the rules and the notation of the examples. */
  readonly about: string;
  // biome-ignore lint/suspicious/noExplicitAny: each list has places of its own kind.
  readonly rules: readonly Rule<any>[];
  /** Runs the code that uses the list on an example or counter-example, and returns the example as it is afterwards. */
  readonly run: (text: string) => string;
}

export const ruleTables: readonly RuleTable[] = [
  {
    title: 'Where a syllable ends',
    file: 'src/analyze/syllables/cut-rules.ts',
    about: 'For each two vowels of a part of a word. A dot is a cut.',
    rules: CUT_RULES,
    run: divide,
  },
  {
    title: 'Types of syllables',
    file: 'src/analyze/syllables/classify-syllable.ts',
    about:
      'For each syllable by the spelling of its vowel; `other` is a value that a reader would not expect.',
    rules: TYPE_RULES,
    run: (text) => sayTypes(text.split(' ')[0]!),
  },
  {
    title: 'The pattern of a spelling',
    file: 'src/analyze/patterns/name-pattern.ts',
    about: 'Where several rows of the catalogue have the same letters and sound. The row is behind the word.',
    rules: PATTERN_RULES,
    run: sayPattern,
  },
  {
    title: 'A suffix and its base',
    file: 'src/analyze/morphology/add-suffix.ts',
    about: 'How they are spelt together.',
    rules: SUFFIX_RULES,
    run: sayTogether,
  },
  {
    title: 'The base of a word with a suffix',
    file: 'src/analyze/morphology/restore-stem.ts',
    about: 'Whether a word may be that base and that suffix, by its letters, and with which spelling change.',
    rules: STEM_RULES,
    run: sayChange,
  },
  {
    title: 'Rows that follow from others',
    file: 'src/analyze/standing/follow-rules.ts',
    about:
      'For each row of the catalogue that a group may know without a lesson on it. Examples have the patterns that are taught, an option of the group and the row.',
    rules: FOLLOW_RULES,
    run: askFollow,
  },
  {
    title: 'The reading of a homograph',
    file: 'src/analyze/homographs/reading-rules.json',
    about:
      'For each word by itself, before the learnt weights are asked. Readings are numbered as in `homographs.tsv`.',
    rules: readingRules().all,
    run: settleMarked,
  },
  {
    title: 'Phrase breaks',
    file: 'src/lesson/smooth-reading/break-rules.ts',
    about: 'How good a place for a break is between two words, from never (-20) to 4. A bar is a break.',
    rules: BREAK_RULES,
    run: (text) => cutPhrases(text.replaceAll(' | ', ' ')).join(' | '),
  },
  {
    title: 'British readings',
    file: 'src/analyze/accent/british-rules.ts',
    about:
      'What the British say otherwise, for each spelling of an American reading. Behind the word is a spelling and how it is heard; no rule applies to those that only lose their r.',
    rules: BRITISH_RULES,
    run: sayBritish,
  },
  {
    title: 'The sounds of CMUdict’s phones',
    file: 'src/data/lexicon/clean-pronunciation.ts',
    about: 'For each phone of a word. Behind the word are its phones, then its sounds.',
    rules: PHONE_RULES,
    run: sayClean,
  },
  ...morphologyTables,
  ...shortenTables,
];

/** Writes a word with the types of its syllables: ta.ble (open, consonant-le). */
function sayTypes(text: string): string {
  const types = readingOf(text).syllables.map(({ type }) => type);
  return `${divide(text)} (${types.join(', ')})`;
}

/** Writes a word with the pattern that the text names, or else with all patterns of the word: an.gel: a-long-closed. */
function sayPattern(text: string): string {
  const [word = '', pattern = ''] = text.split(': ');
  const all = readingOf(word).units.map((unit) => unit.pattern);
  return `${divide(word)}: ${all.includes(pattern) ? pattern : all.join(' ')}`;
}

/** hop + ing = hopping. */
function sayTogether(text: string): string {
  const [base = '', suffix = ''] = text.replace(/ =.*/, '').split(' + ');
  return `${base} + ${suffix} = ${addSuffix(base, suffix).spelling}`;
}

/** hopping = hop + ing: double. */
function sayChange(text: string): string {
  const [word = '', base = '', suffix = ''] = text.replace(/:.*/, '').split(/ [=+] /);
  const change = changeBetween(base, word, suffix, word.slice(0, -suffix.length)) ?? 'no';
  return `${word} = ${base} + ${suffix}: ${change}`;
}

/** Runs the rules on the row that the example names. Returns the example unchanged. */
function askFollow(text: string): string {
  const [, taught = '', option = '', value = '', id = ''] = /^(.+), (\w+) (\w+): (.+)$/.exec(text)!;
  const options = {
    schwa: 'strict',
    shortOMerged: false,
    wh: 'counted',
    blends: 'counted',
    syllableTypes: 'counted',
    [option]: /^(?:true|false)$/.test(value) ? value === 'true' : value,
  } as const;
  const row = catalogue.find((other) => other.id === id)!;
  const known = readKnown(bitsOf(taught.split(' ')), options);
  for (const rule of FOLLOW_RULES) if (rule.isFor(row)) rule.applies({ row, known });
  return text;
}

/** Asks for the reading of the word between asterisks. Returns the sentence unchanged. */
function settleMarked(text: string): string {
  const [before = '', word = '', after = ''] = text.split('*');
  const place = readContext(before + word + after, before.length, before.length + word.length);
  settleByRule(word, place.before, place.after);
  return text;
}

/**
 * Writes the spelling that the text names with its British pronunciation, for example carry: a AE. The spelling is
 * taken from the word's own American spellings.
 */
function sayBritish(text: string): string {
  const [word = '', shown = ''] = text.split(': ');
  const { findAmerican } = createBritish(loadLexicon(), { accent: 'british', bath: 'father' });
  const spellings = toBritish(word, spellingsOf(findAmerican(word)[0]!), { broadBath: true });
  const heard = hearBritish({ parts: [{ role: 'base', spellings }], base: null, affixes: [] });
  const said = spellings.map(({ letters }, i) => `${letters} ${heard[i]}`).join(' ');
  return `${word}: ${
    said
      .split(/ (?=[^A-Z])/)
      .join(' ')
      .includes(shown)
      ? shown
      : said
  }`;
}

/** fire: F AY1 ER0 = F AY R. */
function sayClean(text: string): string {
  const [word = '', phones = ''] = text.replace(/ = .*/, '').split(': ');
  return `${word}: ${phones} = ${cleanPronunciation(word, phones.split(' ')).join(' ')}`;
}

function divide(text: string): string {
  return readingOf(text)
    .syllables.map((syllable) => syllable.text)
    .join('.');
}

/**
 * Returns the first reading of a word. Cuts in the text are ignored. Each call uses a new analyser, since an analyser
 * remembers its words.
 */
function readingOf(text: string): Reading {
  const word = text.replaceAll('.', '');
  return createAnalyzer(loadLexicon(), loadGuesser()).analyze(word).readings[0]!;
}

/**
 * Runs a list of rules on `text`. Returns the names of the rules that were the first to apply at some place, and the
 * resulting text.
 */
export function rulesMet({ rules, run }: RuleTable, text: string): { names: Set<string>; result: string } {
  const names = new Set<string>();
  const kept = rules.map(({ applies }) => applies);
  for (const [i, rule] of rules.entries()) {
    const watched = (place: unknown): boolean => {
      const met = kept[i]!(place);
      if (met) names.add(rule.name);
      return met;
    };
    Object.assign(rule, { applies: watched });
  }
  try {
    return { result: run(text), names };
  } finally {
    for (const [i, rule] of rules.entries()) Object.assign(rule, { applies: kept[i] });
  }
}
