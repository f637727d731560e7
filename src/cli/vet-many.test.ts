import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Writable } from 'node:stream';
import { afterAll, beforeEach, expect, test, vi } from 'vitest';
import type { FoundText } from './find-texts.ts';
import { vetMany } from './vet-many.ts';
import type { Row } from './vet-worker.ts';

/** The files that the threads were asked to vet, and the files that end a thread. */
const asked: string[][] = [];
const deadly = new Set<string>();
let printed = '';

vi.mock('./start-pool.ts', () => ({
  startPool: () => ({
    async run({ texts }: { texts: readonly FoundText[] }): Promise<Row[]> {
      asked.push(texts.map(({ path }) => nameOf(path)));
      if (texts.some(({ path }) => deadly.has(nameOf(path)))) throw new Error('its thread has ended');
      return texts.map(({ path }) => ({ path, problem: null, row: `\n"${nameOf(path)}"` }));
    },
    close: async () => undefined,
  }),
}));
vi.mock('./open-output.ts', () => ({
  OutputFault: class extends Error {},
  openOutput: () => ({
    stream: new Writable({
      write(piece, _encoding, done) {
        printed += piece;
        done();
      },
    }),
    endWhole: () => undefined,
  }),
}));

const folder = mkdtempSync(join(tmpdir(), 'wordreach-'));
const nameOf = (path: string): string => path.slice(folder.length + 1);
const textOf = (name: string, length: number): FoundText => {
  writeFileSync(join(folder, name), 'fog '.repeat(length / 4));
  return { path: join(folder, name), error: null };
};
beforeEach(() => {
  asked.length = 0;
  printed = '';
  deadly.clear();
});
afterAll(() => {
  rmSync(folder, { recursive: true });
  process.exitCode = 0;
});
const vet = (texts: readonly FoundText[]) => vetMany(texts, { out: 'json', words: false, jobs: 2 }, []);

test('small files share a thread task, a large file has its own, and all are printed in order', async () => {
  const small = Array.from({ length: 20 }, (_, n) => textOf(`small-${n}`, 400));
  await vet([...small.slice(0, 2), textOf('book', 40_000), ...small.slice(2)]);
  const names = small.map(({ path }) => nameOf(path));
  expect(asked).toEqual([names.slice(0, 2), ['book'], names.slice(2, 18), names.slice(18)]);
  expect(JSON.parse(printed)).toEqual([...names.slice(0, 2), 'book', ...names.slice(2)]);
});

test('if a file ends its thread, only that file of its pack has no report', async () => {
  deadly.add('worst');
  await vet([textOf('fog', 400), textOf('worst', 400), textOf('tide', 400)]);
  expect(asked).toEqual([['fog', 'worst', 'tide'], ['fog'], ['worst'], ['tide']]);
  expect(JSON.parse(printed)).toEqual([
    'fog',
    { text: join(folder, 'worst'), error: expect.stringContaining('its thread has ended') },
    'tide',
  ]);
  expect(process.exitCode).toBe(1);
});

test('a missing file goes to a thread by itself', async () => {
  await vet([textOf('fog', 400), { path: join(folder, 'none'), error: null }]);
  expect(asked).toEqual([['fog'], ['none']]);
});
