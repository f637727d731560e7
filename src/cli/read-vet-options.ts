import { availableParallelism } from 'node:os';
import { parseArgs } from 'node:util';
import { calledAs, InputError } from './run-command.ts';

export const OUTS = ['text', 'csv', 'json', 'html'] as const;
export type Out = (typeof OUTS)[number];

/** The options of a call of `vet`. */
export interface VetOptions {
  readonly help: boolean;
  readonly groups: readonly string[];
  readonly sources: readonly string[];
  /** Null gives a whole report for one text, or a table for several texts. */
  readonly out: Out | null;
  /** Whether to print the whole report of one text as JSON. */
  readonly json: boolean;
  readonly jsonl: boolean;
  readonly words: boolean;
  readonly jobs: number;
}

export const VET_USAGE = `Usage: ${calledAs('vet')} --group GROUPFILE [--out csv|json|html|text] FILE|FOLDER|PATTERN|-   (--help says more)`;

export const VET_HELP = `${VET_USAGE}

Vets texts for groups: txt, md, html, docx, pdf and epub; a folder stands for all of them in it
and below, a pattern in quotation marks ('news/*.txt') for what it finds, - for stdin.

  --group FILE     a group file; several may be given: every text is vetted for each
  --out KIND       csv, json, html or text: a line, record or row for each text and group; without
                   it one text has a whole report, several have a line each
  --json           the whole report of one text for one group, as JSON
  --jsonl          JSON lines from stdin to stdout: {"id","text"} or {"id","html"} is answered with
                   {"id","reports"} or {"id","error"}, in the same order, as soon as it is done
  --words          reports of --out json and --jsonl list every word
  --jobs N         threads, as many as there are processors where it is not given

Exit code: 0 all texts were read; 1 some could not be, each with a line on stderr (in --jsonl with
its answer), or have no words; 2 wrong use, nothing was done; 3 the output takes no more, and 130
stopped by Ctrl-C: what was printed is whole.`;

interface Asked extends VetOptions {
  /** The value of `--out` as it was written, even if it is not a known format. */
  readonly outAsked: string | undefined;
}

/** Option combinations that are refused, and the reason. The first that applies is reported. */
const REFUSALS: readonly {
  readonly applies: (asked: Asked) => boolean;
  readonly problem: (asked: Asked) => string;
}[] = [
  {
    applies: ({ groups }) => groups.length === 0,
    problem: () => 'No group given.',
  },
  {
    applies: ({ outAsked, out }) => outAsked !== undefined && out === null,
    problem: ({ outAsked }) => `There is no --out ${outAsked}.`,
  },
  {
    applies: ({ jobs }) => !Number.isInteger(jobs) || jobs < 1,
    problem: () => 'Give --jobs as a whole number from 1 on.',
  },
  {
    applies: ({ jsonl, sources, out, json }) => jsonl && (sources.length > 0 || out !== null || json),
    problem: () =>
      'With --jsonl the texts come on stdin and go to stdout as JSON lines; leave files, --out and --json.',
  },
  {
    applies: ({ jsonl, sources }) => !jsonl && sources.length === 0,
    problem: () => 'Give a text to vet.',
  },
  {
    applies: ({ sources, groups, out }) =>
      sources.includes('-') && (sources.length > 1 || groups.length > 1 || out !== null),
    problem: () => 'Text on stdin (-) has a whole report for one group; give --json or nothing with it.',
  },
  {
    applies: ({ json, out, groups }) => json && (out !== null || groups.length > 1),
    problem: () => '--json is the whole report of one text for one group; give --out json for more.',
  },
  {
    applies: ({ words, jsonl, out }) => words && !jsonl && out !== 'json',
    problem: () => '--words goes with --out json or --jsonl.',
  },
];

/**
 * Reads the arguments of `vet`. Throws `InputError` for options that do not fit together, and `TypeError` for unknown
 * options.
 */
export function readVetOptions(args: readonly string[]): VetOptions {
  const { values, positionals: sources } = parseArgs({
    args: [...args],
    allowPositionals: true,
    options: {
      help: { type: 'boolean', default: false },
      group: { type: 'string', multiple: true, default: [] },
      out: { type: 'string' },
      json: { type: 'boolean', default: false },
      jsonl: { type: 'boolean', default: false },
      words: { type: 'boolean', default: false },
      jobs: { type: 'string', default: String(availableParallelism()) },
    },
  });
  const { help, group: groups, json, jsonl, words } = values;
  const out = OUTS.find((one) => one === values.out) ?? null;
  const jobs = Number(values.jobs);
  const options: VetOptions = { help, groups, sources, out, json, jsonl, words, jobs };
  const asked: Asked = { ...options, outAsked: values.out };
  const refusal = help ? undefined : REFUSALS.find(({ applies }) => applies(asked));
  if (refusal) throw new InputError(`${refusal.problem(asked)}\n${VET_USAGE}`);
  return options;
}
