import { execFile } from 'node:child_process';
import { readFile, writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { build } from 'esbuild';

/**
 * Counts the processor's instructions of the engine's hot loops, a word, and prints them beside those that were kept (`counts.json`), so that a
 * loop that got slower shows however busy the machine is. Valgrind counts; V8 interprets, since what it compiles and when differs from
 * run to run. With `--keep` the new counts are kept.
 */
const KEPT = new URL('counts.json', import.meta.url);
// As deep as this folder, because the tables are looked for from here.
const script = fileURLToPath(new URL('../.output/hot-loops.mjs', import.meta.url));
/** How often a loop runs for the first count and for the second; the difference has no start in it. */
const FEW = 1;
const MANY = 3;
/** A difference below this may be the version of Node or of what it is made for. */
const NOISE = 0.03;

const run = promisify(execFile);
await build({
  entryPoints: [fileURLToPath(new URL('hot-loops.ts', import.meta.url))],
  outfile: script,
  bundle: true,
  packages: 'external',
  platform: 'node',
  format: 'esm',
  target: 'node20',
});

const kept = JSON.parse(await readFile(KEPT, 'utf8').catch(() => '{}')) as Record<string, number>;
const counts: Record<string, number> = {};
const { stdout: names } = await run(process.execPath, [script]);
for (const name of JSON.parse(names) as string[]) {
  const [few, many] = [await count(name, FEW), await count(name, MANY)];
  const perWord = Math.round((many.instructions - few.instructions) / (MANY - FEW) / many.words);
  counts[name] = perWord;
  const ratio = perWord / (kept[name] ?? perWord);
  const verdict =
    ratio > 1 + NOISE ? 'more than before' : ratio < 1 - NOISE ? 'less than before' : 'as before';
  console.log(
    `${name.padEnd(38)} ${ratio.toFixed(3).padStart(7)}   ${perWord.toLocaleString('en')} instructions a word, ${verdict}`,
  );
}
if (process.argv.includes('--keep')) await writeFile(KEPT, `${JSON.stringify(counts, null, 2)}\n`);

async function count(name: string, times: number): Promise<{ instructions: number; words: number }> {
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
