import { fstatSync } from 'node:fs';
import { openOutput } from './open-output.ts';
import { readBytes } from './read-file.ts';
import { readLines } from './read-lines.ts';
import type { VetOptions } from './read-vet-options.ts';
import { runTasks } from './run-tasks.ts';
import { stopOnInterrupt } from './stop-on-interrupt.ts';
import type { VettedGroup } from './text-record.ts';
import { type AnsweredLine, explainLine, failLine } from './vet-line.ts';

/** Answers JSON lines on stdin with JSON lines on stdout. The answers come in input order, as soon as they are ready. */
export async function vetLines(
  { words, jobs }: Pick<VetOptions, 'words' | 'jobs'>,
  groups: readonly VettedGroup[],
): Promise<undefined> {
  // Node reads a folder as an empty stream.
  if (fstatSync(STDIN).isDirectory()) readBytes('-');
  const { signal, end } = stopOnInterrupt();
  let done = 0;
  await runTasks<{ line: string; number: number }, AnsweredLine>({
    tasks: readLines(process.stdin, signal),
    settings: { groups: groups.map(({ group, sequence }) => ({ group, sequence })), words, out: 'json' },
    jobs,
    fail: ({ number }, error) => failLine(null, number, explainLine(error)),
    head: '',
    print({ json, failed }) {
      done++;
      if (failed) process.exitCode = 1;
      return [`${json}\n`];
    },
    foot: () => '',
    output: openOutput(),
    signal,
  });
  end(`${done} lines`);
}

const STDIN = 0;
