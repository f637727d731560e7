import { PREFIXES, SUFFIXES } from '../../src/analyze/morphology/affixes.ts';
import { restoreStem } from '../../src/analyze/morphology/restore-stem.ts';
import { irregularBases, irregularForms } from '../../src/analyze/standing/irregular-forms.ts';
import type { MadeOf, WordAnalysis } from '../../src/analyze/types.ts';
import { readCorrections } from '../../src/data/morphology/read-corrections.ts';
import { readCmudict } from '../../src/data/read-cmudict.ts';
import { readCapitalised, readFrequency } from '../../src/data/read-frequency.ts';
import { readWordnet } from '../../src/data/read-wordnet.ts';
import { generateInflections } from '../accuracy/generate-inflections.ts';
import { loadLexicon } from '../load-analyzer.ts';
import type { Breach, Law } from './law.ts';
import { lessonWords } from './lesson-words.ts';

const JOINS = /^(suffix|prefix|change)-|^(compound|contraction|possessive)$/;
/** Patterns that an ending may add to the letters before it: a weak vowel instead of a full vowel, and the v of leaves. */
const LEFT_BY_JOINING = /^(schwa-.*|weak-e|v)$/;

/** A word built from other words needs exactly the patterns of its parts and the patterns that join the parts. */
export function partsAndJoints(): Law {
  const lexicon = loadLexicon();
  let looked = 0;
  const breaches: Breach[] = [];
  for (const { word, readings } of lessonWords) {
    const { madeOf, requires } = readings[0]!;
    const record = lexicon.find(word.toLowerCase());
    if (!madeOf || record?.readings[0]?.kind === 'whole') continue;
    looked++;
    const ofParts = new Set(madeOf.parts.flatMap((part) => part.requires));
    const extra = requires.filter((id) => !ofParts.has(id) && !JOINS.test(id) && !LEFT_BY_JOINING.test(id));
    const lost = [...ofParts, ...madeOf.joint].filter((id) => !requires.includes(id));
    if (extra.length + lost.length > 0)
      breaches.push({ key: word, found: [...extra, ...lost.map((id) => `not ${id}`)].join(' ') });
  }
  return { id: 'parts', says: 'a made word needs its parts and what joins them', looked, breaches };
}

/** Every inflected form that a library makes of a lesson word is joined to that word, and so is every -ves plural. */
export function inflectionsAreJoined(): Law {
  const facts = { ...readWordnet(), rank: readFrequency(), capitalised: readCapitalised() };
  const listed = new Map(lessonWords.map((analysis) => [analysis.word, analysis]));
  const forms = [
    ...generateInflections(readCmudict(), facts, 16_000),
    ...irregularBases().flatMap((base) =>
      irregularForms(base)
        .filter((form) => form.endsWith('ves'))
        .map((form) => ({ form, base })),
    ),
  ].filter(({ form, base }) => listed.has(form) && listed.has(base));
  const breaches = forms
    .filter(({ form, base }) => !isMadeOf(listed.get(form)!, base))
    .map(({ form, base }) => ({ key: form, found: `not of ${base} but ${describe(listed.get(form)!)}` }));
  return {
    id: 'inflections',
    says: 'an inflected form is joined to its base',
    looked: forms.length,
    breaches,
  };
}

/**
 * Checks pairs of lesson words in which one word, by its letters, is the other word with an affix of our list, and
 * WordNet relates the two words. The longer word is joined to the shorter word, or both words have the same root.
 */
export function derivationsAreJoined(): Law {
  const { related } = readWordnet();
  const { deny } = readCorrections();
  const listed = new Map(lessonWords.map((analysis) => [analysis.word, analysis]));
  const pairs = lessonWords.flatMap(({ word }) =>
    deny.has(word)
      ? []
      : [
          ...SUFFIXES.flatMap(({ text }) => restoreStem(word, text).map(({ stem }) => stem)),
          ...PREFIXES.filter(({ text }) => word.startsWith(text)).map(({ text }) => word.slice(text.length)),
        ]
          .filter((base) => listed.has(base) && related.get(word)?.has(base))
          .map((base) => ({ word, base })),
  );
  const breaches = pairs
    .filter(({ word, base }) => !isMadeOf(listed.get(word)!, base) && !shareRoot(word, base, listed))
    .map(({ word, base }) => ({ key: word, found: `not of ${base} but ${describe(listed.get(word)!)}` }));
  return { id: 'derivations', says: 'a derived form is joined to its base', looked: pairs.length, breaches };
}

function isMadeOf({ readings }: WordAnalysis, base: string): boolean {
  return readings.some((reading) => reading.base === base || hasPart(reading.madeOf, base));
}

/**
 * Returns whether two words have the same base. For example, unfriendly is unfriend + ly or un + friendly, and both
 * parts have the base friend.
 */
function shareRoot(word: string, other: string, listed: ReadonlyMap<string, WordAnalysis>): boolean {
  const [one, two] = [word, other].map((each) => listed.get(each)!.readings[0]!.base);
  return one !== null && one === two;
}

function hasPart(madeOf: MadeOf | undefined, base: string): boolean {
  return madeOf?.parts.some((part) => part.word === base || hasPart(part.madeOf, base)) ?? false;
}

function describe({ readings }: WordAnalysis): string {
  const { base, affixes } = readings[0]!;
  return base === null ? 'whole' : `${base} + ${affixes.map(({ text }) => text).join(' + ')}`;
}
