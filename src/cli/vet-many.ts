import { explainFault } from './explain-fault.ts';
import type { FoundText } from './find-texts.ts';
import { openOutput } from './open-output.ts';
import type { VetOptions } from './read-vet-options.ts';
import type { ReportWriter } from './report-writer.ts';
import { runTasks } from './run-tasks.ts';
import { showProgress } from './show-progress.ts';
import { stopOnInterrupt } from './stop-on-interrupt.ts';
import { openTerminal } from './terminal.ts';
import type { TextRecord, VettedGroup } from './text-record.ts';
import { createCsvWriter } from './write-csv.ts';
import { createHtmlWriter } from './write-html.ts';
import { createJsonWriter } from './write-json.ts';
import { createTableWriter } from './write-table.ts';

/** Vets many files for several groups and prints what `--out` says; files that fail are also told of on stderr. */
export async function vetMany(
  texts: readonly FoundText[],
  { out, words, jobs }: Pick<VetOptions, 'out' | 'words' | 'jobs'>,
  groups: readonly VettedGroup[],
): Promise<undefined> {
  const writer = createWriter(out ?? 'text', groups);
  const progress = showProgress(texts.length);
  const { signal, end } = stopOnInterrupt();
  let done = 0;
  await runTasks<FoundText, TextRecord>({
    tasks: texts,
    settings: { groups: groups.map(({ group, sequence }) => ({ group, sequence })), words },
    jobs: Math.min(jobs, texts.length),
    fail: ({ path }, error) => ({ text: path, error: explainFault(error, path) }),
    head: writer.head(),
    print(record) {
      done++;
      if ('error' in record) {
        process.exitCode = 1;
        progress.say(`${record.text}: ${record.error}`);
      }
      progress.step();
      return writer.row(record);
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

function createWriter(out: NonNullable<VetOptions['out']>, groups: readonly VettedGroup[]): ReportWriter {
  switch (out) {
    case 'csv':
      return createCsvWriter();
    case 'json':
      return createJsonWriter();
    case 'html':
      return createHtmlWriter(groups);
    case 'text':
      return createTableWriter(
        groups.map(({ group }) => group.name),
        openTerminal(),
      );
  }
}
