import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));
/** The numbers of characters in a file: a story for a lesson, and a book. */
export const FILE_SIZES = [2000, 2_000_000] as const;
/**
 * The number of characters in all files together, for each file size. There are enough characters to make a thread's
 * first seconds, in which its code is not compiled yet, a small part of the time. Books are vetted three times as fast
 * as stories, so there are three times as many characters.
 */
const ALL: Readonly<Record<(typeof FILE_SIZES)[number], number>> = { 2000: 24_000_000, 2000000: 72_000_000 };

/** The speed of vetting many files, in words a second. */
export interface VetSpeed {
  readonly words: number;
  readonly megabytes: number;
  /** Speed from the start of the program to its end, with one thread and with two. */
  readonly whole: readonly [one: number, two: number];
  /** The same speed without the time that the program takes for one file with a word in it. */
  readonly running: readonly [one: number, two: number];
}

/** Vets plain text in files of the given number of characters, with the command itself. */
export async function measureVetMany(size: (typeof FILE_SIZES)[number]): Promise<VetSpeed> {
  const folder = mkdtempSync(join(tmpdir(), 'wordreach-'));
  try {
    const write = createWriter();
    for (let n = 0; n < ALL[size] / size; n++) writeFileSync(join(folder, `${n}.txt`), write(size));
    const single = [1, 2].map((n) => join(folder, `${n}.text`));
    // Each file has one word, and is so large that it goes to a thread by itself.
    for (const file of single) writeFileSync(file, `Fog.${' '.repeat(20_000)}`);
    await run(process.execPath, [join(root, 'src/tools/bundle-commands.mjs')]);
    const times: { start: number; whole: number; words: number }[] = [];
    for (const jobs of [1, 2]) {
      // One file for each thread, so that all threads start.
      const start = await vet(single, jobs);
      const whole = await vet([folder], jobs);
      times.push({ start: start.seconds, whole: whole.seconds, words: whole.words });
    }
    const [one, two] = times as [(typeof times)[0], (typeof times)[0]];
    const perSecond = (time: typeof one, seconds: number): number => Math.round(time.words / seconds);
    return {
      words: one.words,
      megabytes: ALL[size] / 1e6,
      whole: [perSecond(one, one.whole), perSecond(two, two.whole)],
      running: [perSecond(one, one.whole - one.start), perSecond(two, two.whole - two.start)],
    };
  } finally {
    rmSync(folder, { recursive: true });
  }
}

async function vet(sources: readonly string[], jobs: number): Promise<{ seconds: number; words: number }> {
  const group = join(root, 'profiles/groups/herons.json');
  const start = performance.now();
  const out = await run(process.execPath, [
    join(root, '.output/cli/vet.mjs'),
    ...['--group', group, '--out', 'json', '--jobs', String(jobs)],
    ...sources,
  ]);
  const seconds = (performance.now() - start) / 1000;
  const records = JSON.parse(out) as {
    readonly reports: readonly { readonly tally: Readonly<Record<string, number>> }[];
  }[];
  const tallies = records.flatMap(({ reports }) => reports.map(({ tally }) => tally));
  return { seconds, words: tallies.reduce((sum, { running = 0, names = 0 }) => sum + running + names, 0) };
}

async function run(program: string, args: readonly string[]): Promise<string> {
  const child = spawn(program, args, { stdio: ['ignore', 'pipe', 'inherit'] });
  let out = '';
  child.stdout.setEncoding('utf8').on('data', (piece: string) => {
    out += piece;
  });
  const [code] = await once(child, 'close');
  if (code !== 0) throw new Error(`${args[0]} ended with ${code}.`);
  return out;
}

/**
 * Creates a writer of texts, which are the same each time. The texts have sentences from Tarn Quay, and sentences of
 * the most common words, in which the commoner words come more often.
 */
function createWriter(): (length: number) => string {
  const common = JSON.parse(
    readFileSync(join(root, 'public/data/common-words.json'), 'utf8'),
  ) as readonly string[];
  let state = 20_261_125;
  const random = (): number => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
  const pick = <T>(list: readonly T[], skew = 1): T => list[Math.floor(random() ** skew * list.length)]!;
  const sentence = (): string => {
    if (random() < 0.4) return pick(sentences);
    const words = Array.from({ length: 5 + Math.floor(random() * 12) }, () => pick(common, 2)).join(' ');
    return `${words[0]!.toUpperCase()}${words.slice(1)}${pick(['.', '.', '.', '?', '!'])}`;
  };
  return (length) => {
    let text = '';
    while (text.length < length) text += sentence() + (random() < 0.2 ? '\n\n' : ' ');
    return text.slice(0, length);
  };
}

const sentences = [
  'The Marigold came in late, with her deck full of crates and her one bell out of tune.',
  'Mr. Falk had read the tide table twice, and still the boats lay on the mud at noon.',
  'Ines wound the rope round the post while Otto held the lamp close to the knot.',
  '“Is that the wind or the horn?” asked Wilma, but nobody on the quay could tell.',
  'Bram lives above the fish market, where the gulls’ cries wake him before six.',
  'Forty pupils, two teachers and a very wet dog went up the lighthouse stairs.',
  'They sold herring, crab and, on Fridays, a soup that nobody would name.',
  "It wasn't the storm that broke the mast; it was the long, quiet swell that came behind it.",
];
