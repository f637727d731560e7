import { readFileSync } from 'node:fs';

/**
 * The rows of a table in src/data/source, such as `pronunciations.tsv`, without its head. Throws an error that names the line where one
 * has more or fewer columns than the head: a space in place of a tab would go unseen.
 */
export function readSourceRows(file: string): string[][] {
  const [head, ...rows] = readFileSync(new URL(`source/${file}`, import.meta.url), 'utf8')
    .trimEnd()
    .split('\n')
    .map((line) => line.split('\t'));
  for (const [i, row] of rows.entries()) {
    if (row.length !== head!.length || row.some((cell) => cell.trim() === ''))
      throw new Error(
        `src/data/source/${file}, line ${i + 2}: give ${head!.join(', ')} with a tab between them, not: ${row.join(' | ')}`,
      );
  }
  return rows;
}
