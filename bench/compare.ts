import { execFile } from 'node:child_process';
import { cpSync, existsSync, rmSync, symlinkSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { type Figure, type Section, spreadOf } from './figure.ts';
import { lookAtOthers, QUIET } from './quiet.ts';

const execute = promisify(execFile);
const here = fileURLToPath(new URL('..', import.meta.url));

/**
 * Runs sections on this tree and on another commit in turn, so that both meet the machine in the same state. Prints the
 * ratio of each figure of this tree to the figure of the other commit: 1 if nothing changed. The other commit is built
 * in a folder of its own, with the bench of this tree.
 */
export async function compareWith(ref: string, sections: readonly Section[], runs: number): Promise<void> {
  await withTree(ref, async (other) => {
    await execute('npx', ['wxt', 'prepare'], { cwd: other });
    await execute('npm', ['run', '--silent', 'build'], { cwd: other, maxBuffer: 1e8 });
    for (const { name } of sections) await compareSection(name, other, runs);
  });
}

/**
 * Runs work on another commit in a folder of its own. The packages, data and bench are those of this tree, so that only
 * the code differs.
 */
export async function withTree<T>(ref: string, work: (tree: string) => Promise<T>): Promise<T> {
  const tree = join(here, '.output', 'compared');
  await removeTree(tree);
  await execute('git', ['-C', here, 'worktree', 'add', '--detach', tree, ref]);
  try {
    symlinkSync(join(here, 'node_modules'), join(tree, 'node_modules'));
    if (existsSync(join(here, 'public/data')))
      cpSync(join(here, 'public/data'), join(tree, 'public/data'), { recursive: true });
    rmSync(join(tree, 'bench'), { recursive: true });
    cpSync(join(here, 'bench'), join(tree, 'bench'), { recursive: true });
    return await work(tree);
  } finally {
    await removeTree(tree);
  }
}

async function compareSection(name: string, other: string, runs: number): Promise<void> {
  const pairs: Figure[][] = [];
  let busiest = 0;
  for (let run = 0; run < runs; run++) {
    busiest = Math.max(busiest, await lookAtOthers());
    // The two trees take turns at being measured first.
    const first = run % 2 === 0 ? here : other;
    const figures = new Map([[first, await measureIn(first, name)]]);
    const second = first === here ? other : here;
    figures.set(second, await measureIn(second, name));
    pairs.push(divide(figures.get(here)!, figures.get(other)!));
  }
  const besides =
    busiest > QUIET ? `; not quiet, others took up to ${Math.round(busiest * 100)}% of the machine` : '';
  console.log(`${name}: this tree to the other, ${runs} runs of each in turn${besides}`);
  for (const { figure, least, most } of spreadOf(pairs))
    console.log(
      `${figure.what.padEnd(56)} ${figure.ratio.toFixed(3).padStart(8)}  ${least.toFixed(3)} to ${most.toFixed(3)}   ${figure.note}`,
    );
}

/** Returns the lines that both trees have, as the ratio of our figure to the other figure. */
function divide(ours: readonly Figure[], theirs: readonly Figure[]): Figure[] {
  return ours.flatMap(({ what, ratio, note }) => {
    const same = theirs.find((figure) => figure.what === what);
    return same && same.ratio !== 0 ? [{ what, ratio: ratio / same.ratio, note }] : [];
  });
}

async function measureIn(tree: string, name: string): Promise<Figure[]> {
  const { stdout } = await execute('npx', ['tsx', 'bench/run.ts', '--json', '--only', name], {
    cwd: tree,
    maxBuffer: 1e8,
  });
  return JSON.parse(stdout.slice(stdout.indexOf('['))) as Figure[];
}

async function removeTree(tree: string): Promise<void> {
  rmSync(tree, { recursive: true, force: true });
  await execute('git', ['-C', here, 'worktree', 'prune']);
}
