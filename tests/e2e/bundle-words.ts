import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import herons from '../../profiles/groups/herons.json' with { type: 'json' };
import steady from '../../profiles/sequences/steady-steps.json' with { type: 'json' };
import { compileGroup, createJudge, cutText, parseGroup, parseSequence } from '../../src/analyze/index.ts';
import type { Standing, WordKey } from '../../src/analyze/types.ts';
import { nastyText } from '../fuzz/nasty-inputs.ts';
import { loadAnalyzer } from '../load-analyzer.ts';

/**
 * Words that no list contains, with and without accents. Each of them once made the bundled background fail, and the
 * page with it. They come from texts on the web and were chosen one by one.
 */
export const UNLISTED = (
  'piñata José jalapeño Niño Beyoncé Pokémon Māori façade naïve café coöperate Zoë Noël Chloë Renée André Dvořák Łódź Åland smörgåsbord ' +
  'über Köln señor señora mañana São Kraków Reykjavík Øresund crème brûlée fiancée soufflé touché passé résumé château ' +
  "Nyong'o's d'Artagnan rock'n'roll hippopotomonstrosesquippedaliophobia llanfairpwllgwyngyllgogerychwyrndrobwllllantysiliogogoch"
).split(' ');

const SEED = 20;
const TEXTS = 3000;

/**
 * Returns keys for the background: all words of tests/words, words that no list contains, and words from texts made to
 * break readers.
 */
export function bundleKeys(): WordKey[] {
  const folder = new URL('../words/', import.meta.url);
  const listed = readdirSync(folder)
    .filter((file) => /\.(?:tsv|txt)$/.test(file))
    .flatMap((file) => keysOf(readFileSync(new URL(file, folder), 'utf8')));
  const nasty = fc.sample(nastyText, { seed: SEED, numRuns: TEXTS }).flatMap(keysOf);
  // Messages are JSON in Chromium, which cannot contain lone surrogates.
  const keys = [...UNLISTED, ...listed, ...nasty].filter((key) => !/\p{Cs}/u.test(key));
  return [...new Set(keys)];
}

/** Returns the standings of the words for the default group, computed from the sources. */
export function standingsBySource(keys: readonly WordKey[]): Standing[] {
  const judge = createJudge(loadAnalyzer(), compileGroup(parseGroup(herons), parseSequence(steady)));
  return keys.map((key) => judge(key).standing);
}

function keysOf(text: string): WordKey[] {
  return cutText(text)
    .filter(({ kind }) => kind === 'word')
    .map(({ key }) => key);
}
