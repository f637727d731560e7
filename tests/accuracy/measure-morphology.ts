import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Derivation } from '../../src/data/morphology/derivation.ts';
import { findDerivations } from '../../src/data/morphology/find-derivations.ts';
import { type Facts, rankOf } from '../../src/data/morphology/lexical-facts.ts';
import { readCorrections } from '../../src/data/morphology/read-corrections.ts';
import { readCmudict } from '../../src/data/read-cmudict.ts';
import { readCapitalised, readFrequency } from '../../src/data/read-frequency.ts';
import { readWordnet } from '../../src/data/read-wordnet.ts';
import { generateInflections, undoInflection } from './generate-inflections.ts';

/** The number of right items, the number of all items, and the wrong items. */
export interface Share {
  readonly right: number;
  readonly of: number;
  readonly wrong: readonly string[];
}

export interface MorphologyFigures {
  /**
   * Regular forms that npm `compromise` makes from WordNet base forms. A form is right if it is found with one of its
   * bases.
   */
  readonly inflectionRecall: Share;
  /**
   * Inflected forms that were found. A form is right if `compromise` makes it from the base that was found, or leads
   * back to that base.
   */
  readonly inflectionPrecision: Share;
  /** Rows of morphology-yes.tsv. A row is right if its word is found with base, affix, kind and change. */
  readonly derivationRecall: Share;
  /** Derivations found for words of morphology-yes.tsv and morphology-no.tsv. */
  readonly derivationPrecision: Share;
  /** Words of morphology-no.tsv. A word is right if it is taken as a whole. */
  readonly falseFriends: Share;
}

/** Inflected forms are measured among the commonest words only, since rarer forms are mostly surnames. */
const COMMONEST = 20_000;
const INFLECTIONS = new Set(['s', 'es', 'ed', 'ing', 'est']);

/** Finds the derivations of the whole dictionary and compares them with outside forms and hand-checked lists. */
export function measureMorphology(): MorphologyFigures {
  const words = readCmudict();
  const facts: Facts = { ...readWordnet(), rank: readFrequency(), capitalised: readCapitalised() };
  const found = findDerivations(words, facts, readCorrections());
  return { ...measureInflections(words, facts, found), ...measureByHand(found) };
}

function measureInflections(
  words: ReadonlyMap<string, unknown>,
  facts: Facts,
  found: ReadonlyMap<string, Derivation>,
) {
  const basesOf = new Map<string, Set<string>>();
  for (const { form, base } of generateInflections(words, facts, COMMONEST))
    basesOf.set(form, (basesOf.get(form) ?? new Set()).add(base));
  const inflectionRecall = share(basesOf, ([form, bases]) =>
    bases.has(found.get(form)?.base ?? '')
      ? null
      : `${form}: ${describe(found.get(form))}, not ${[...bases]}`,
  );
  const inflected = [...found].filter(
    ([word, { affix, kind }]) =>
      kind === 'suffix' && INFLECTIONS.has(affix) && rankOf(word, facts) <= COMMONEST,
  );
  const inflectionPrecision = share(inflected, ([word, derivation]) =>
    basesOf.get(word)?.has(derivation.base) || undoInflection(word).includes(derivation.base)
      ? null
      : `${word}: ${describe(derivation)}`,
  );
  return { inflectionRecall, inflectionPrecision };
}

function measureByHand(found: ReadonlyMap<string, Derivation>) {
  const yes = readRows('morphology-yes.tsv');
  const no = readRows('morphology-no.tsv');
  const check = ([word, ...made]: readonly string[]): string | null => {
    const { base, affix, kind, change } = found.get(word!) ?? {};
    const right = [base, affix, kind, change].join() === made.join();
    return right
      ? null
      : `${word}: ${describe(found.get(word!))}, not ${made.slice(0, 2).join(' + ') || 'built'}`;
  };
  const checkNo = ([word]: readonly string[]): string | null => (found.has(word!) ? check([word!]) : null);
  return {
    derivationRecall: share(yes, check),
    derivationPrecision: share(
      [...yes, ...no].filter(([word]) => found.has(word!)),
      (row) => (row.length > 2 ? check(row) : checkNo(row)),
    ),
    falseFriends: share(no, checkNo),
  };
}

function describe(derivation: Derivation | undefined): string {
  return derivation ? `${derivation.base} + ${derivation.affix}` : 'whole';
}

function share<Row>(rows: Iterable<Row>, fault: (row: Row) => string | null): Share {
  const all = [...rows];
  const wrong = all.map(fault).filter((one) => one !== null);
  return { right: all.length - wrong.length, of: all.length, wrong };
}

function readRows(file: string): string[][] {
  const text = readFileSync(new URL(`../words/${file}`, import.meta.url), 'utf8');
  return text
    .trimEnd()
    .split('\n')
    .slice(1)
    .map((line) => line.split('\t'));
}

// Run by itself, this file prints every figure. With --wrong it also prints the wrong words.
if (process.argv[1] === fileURLToPath(import.meta.url)) {
  for (const [name, { right, of, wrong }] of Object.entries(measureMorphology()) as [string, Share][]) {
    process.stdout.write(`${name.padEnd(20)} ${((100 * right) / of).toFixed(2)}%  ${right} of ${of}\n`);
    if (process.argv.includes('--wrong'))
      process.stdout.write(`${wrong.map((one) => `  ${one}\n`).join('')}`);
  }
}
