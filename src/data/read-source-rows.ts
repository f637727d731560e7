import { readFileSync } from 'node:fs';
import { type SourceTable, sourceTables } from './source-tables.ts';

/**
 * Returns the rows of a table in src/data/source, such as `pronunciations.tsv`, without its header. Checks the rows
 * against the table's form in source-tables.ts. Throws an error with the line and its fault.
 */
export function readSourceRows(file: string): string[][] {
  return checkRows(
    file,
    readFileSync(new URL(`source/${file}`, import.meta.url), 'utf8'),
    sourceTables[file] ?? fail(file, 1, 'name its columns in source-tables.ts'),
  );
}

/** Returns the rows of a table given as text. See `readSourceRows`. */
export function checkRows(file: string, content: string, { columns, keys }: SourceTable): string[][] {
  const [head, ...rows] = content
    .trimEnd()
    .split('\n')
    .map((line) => line.split('\t'));
  const names = columns.map(({ name }) => name);
  if (head!.join('\t') !== names.join('\t')) fail(file, 1, `the head is: ${names.join(', ')}`);
  let before = '';
  for (const [i, row] of rows.entries()) {
    const line = i + 2;
    // A space in place of a tab would not be visible, so the columns are shown with separators.
    if (row.length !== columns.length)
      fail(file, line, `give ${names.join(', ')} with a tab between them, not: ${row.join(' | ')}`);
    for (const [c, { name, form, says }] of columns.entries())
      if (!form.test(row[c]!)) fail(file, line, `${name} is ${says}, not: ${row[c]}`);
    const key = row.slice(0, keys).join('\t');
    if (key === before) fail(file, line, `${row.slice(0, keys).join(' ')} is there twice`);
    if (key < before)
      fail(file, line, `${row[0]} comes before ${before.replaceAll('\t', ' ')} in the alphabet`);
    before = key;
  }
  return rows;
}

function fail(file: string, line: number, reason: string): never {
  throw new Error(`src/data/source/${file}, line ${line}: ${reason}`);
}
