import { statSync } from 'node:fs';
import { explainFault } from './explain-fault.ts';
import type { FoundText } from './find-texts.ts';
import { openOutput } from './open-output.ts';
import { openWriter } from './open-writer.ts';
import { resolvePath } from './read-file.ts';
import type { VetOptions } from './read-vet-options.ts';
import { runTasks } from './run-tasks.ts';
import { showProgress } from './show-progress.ts';
import { stopOnInterrupt } from './stop-on-interrupt.ts';
import type { VettedGroup } from './text-record.ts';
import type { Row } from './vet-worker.ts';

/**
 * Vets many files for several groups and prints them in the `--out` format. Files that fail are also reported on
 * stderr.
 */
export async function vetMany(
  texts: readonly FoundText[],
  { out, words, jobs }: Pick<VetOptions, 'out' | 'words' | 'jobs'>,
  groups: readonly VettedGroup[],
): Promise<undefined> {
  const shape = out ?? 'text';
  const writer = openWriter(shape, groups);
  const progress = showProgress(texts.length);
  const { signal, end } = stopOnInterrupt();
  let done = 0;
  await runTasks<{ readonly texts: readonly FoundText[] }, readonly Row[]>({
    tasks: packTexts(texts),
    settings: { groups: groups.map(({ group, sequence }) => ({ group, sequence })), words, out: shape },
    jobs: Math.min(jobs, texts.length),
    async fail({ texts }, error, run) {
      const [{ path }] = texts as [FoundText];
      if (texts.length > 1) return (await Promise.all(texts.map((text) => run({ texts: [text] })))).flat();
      const problem = explainFault(error, path);
      return [{ path, problem, row: writer.row({ text: path, error: problem }) }];
    },
    head: writer.head(),
    *print(rows) {
      for (const { path, problem, row } of rows) {
        if (problem !== null) {
          process.exitCode = 1;
          progress.say(`${path}: ${problem}`);
        }
        progress.step();
        yield done++ > 0 ? writer.between + row : row;
      }
    },
    foot() {
      progress.end();
      return writer.foot();
    },
    output: openOutput(),
    signal,
  });
  end(`${done} of ${texts.length} texts`);
}

/**
 * The largest small file, in bytes. Several small files share one task, since sending a small file takes almost as much
 * time as vetting it.
 */
const SMALL = 16_384;
/** How many small files share one task at most. */
const PACK = 16;

/** Yields the texts in order. A large text is alone, and small texts that follow each other are packed together. */
function* packTexts(texts: readonly FoundText[]): Generator<{ readonly texts: FoundText[] }> {
  let pack: FoundText[] = [];
  for (const text of texts) {
    const isSmall = sizeOf(text) <= SMALL;
    if (pack.length > 0 && (!isSmall || pack.length === PACK)) {
      yield { texts: pack };
      pack = [];
    }
    if (isSmall) pack.push(text);
    else yield { texts: [text] };
  }
  if (pack.length > 0) yield { texts: pack };
}

/** Returns the size of a file in bytes. A file of unknown size counts as too large to be packed. */
function sizeOf({ path }: FoundText): number {
  try {
    return statSync(resolvePath(path)).size;
  } catch {
    return Number.POSITIVE_INFINITY;
  }
}
