import { execFile } from 'node:child_process';
import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs, promisify } from 'node:util';
import { build } from 'esbuild';
import { withTree } from './compare.ts';

/**
 * Counts the processor's instructions per word in the engine's hot loops, and prints them beside the kept counts
 * (`counts.json`). This shows that a loop got slower, however busy the machine is, and the command then fails. Valgrind
 * counts the instructions. V8 interprets the code, since its compilation differs from run to run.
 * With `--keep`, the new counts are kept. With `--compare REF`, the new counts are compared with the counts of another
 * commit on this machine, since the kept counts may come from another kind of processor or another version of Node.
 */
const KEPT = new URL('counts.json', import.meta.url);
/**
 * How often a loop runs for the first count and for the second count. The difference of the two counts does not include
 * the start of the program.
 */
const FEW = 1;
const MANY = 3;
/**
 * The largest difference that is ignored. Such a difference may come from the version of Node or from the target that
 * Node was built for.
 */
const NOISE = 0.03;

type Counts = Record<string, number>;

const run = promisify(execFile);
const { values } = parseArgs({
  options: { keep: { type: 'boolean', default: false }, compare: { type: 'string' } },
});
const before =
  values.compare === undefined
    ? (JSON.parse(await readFile(KEPT, 'utf8').catch(() => '{}')) as Counts)
    : await withTree(values.compare, countAll);
const counts = await countAll(fileURLToPath(new URL('..', import.meta.url)));
for (const [name, perWord] of Object.entries(counts)) {
  const ratio = perWord / (before[name] ?? perWord);
  const verdict =
    ratio > 1 + NOISE ? 'more than before' : ratio < 1 - NOISE ? 'less than before' : 'as before';
  if (ratio > 1 + NOISE && !values.keep) process.exitCode = 1;
  console.log(
    `${name.padEnd(38)} ${ratio.toFixed(3).padStart(7)}   ${perWord.toLocaleString('en')} instructions a word, ${verdict}`,
  );
}
if (values.keep) await writeFile(KEPT, `${JSON.stringify(counts, null, 2)}\n`);

/** Counts the instructions per word of each loop of a tree. */
async function countAll(tree: string): Promise<Counts> {
  // The script is as deep in the tree as the bench, because the tables are looked for from there.
  const script = join(tree, '.output/hot-loops.mjs');
  await build({
    entryPoints: [join(tree, 'bench/hot-loops.ts')],
    outfile: script,
    bundle: true,
    packages: 'external',
    platform: 'node',
    format: 'esm',
    target: 'node20',
    logLevel: 'warning',
  });
  const counts: Counts = {};
  const { stdout: names } = await run(process.execPath, [script]);
  for (const name of JSON.parse(names) as string[]) {
    const [few, many] = [await count(script, name, FEW), await count(script, name, MANY)];
    counts[name] = Math.round((many.instructions - few.instructions) / (MANY - FEW) / many.words);
  }
  return counts;
}

async function count(
  script: string,
  name: string,
  times: number,
): Promise<{ instructions: number; words: number }> {
  const { stdout, stderr } = await run(
    'valgrind',
    [
      '--tool=cachegrind',
      '--cache-sim=no',
      '--cachegrind-out-file=/dev/null',
      process.execPath,
      ...['--jitless', '--single-threaded', '--predictable', '--hash-seed=1', '--random-seed=1'],
      ...[script, name, String(times)],
    ],
    { maxBuffer: 1e8 },
  );
  const instructions = /I\s+refs:\s+([\d,]+)/.exec(stderr)?.[1]?.replaceAll(',', '');
  if (instructions === undefined) throw new Error(`Valgrind counted nothing: ${stderr}`);
  return { instructions: Number(instructions), words: Number(stdout) };
}
