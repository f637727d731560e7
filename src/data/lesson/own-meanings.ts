import { readSourceRows } from '../read-source-rows.ts';

/** What words mean, in a few words that children know, by word (`meanings.tsv`): one sense each, written here. */
export function readOwnMeanings(): ReadonlyMap<string, string> {
  return new Map(readSourceRows('meanings.tsv') as [string, string][]);
}
