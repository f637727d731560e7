import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { compileGroup, createJudge, type Judge, parseGroup, parseSequence } from '../../src/analyze/index.ts';
import { loadEngine } from '../../src/cli/load-engine.ts';
import { findSentences } from '../../src/passage/find-sentences.ts';
import { createShader } from '../../src/passage/shade-line.ts';
import { createShortener, type Shortening } from '../../src/shorten/index.ts';
import { openSwaps } from '../../src/swap/index.ts';

/**
 * Measures how many sentences with words beyond a group get a shorter version, by rule, for groups at a third and two
 * thirds of each starter sequence: `npx tsx tests/accuracy/measure-shorten.ts [--draw 60 SEED] [--safe] [--rule NAME]
 * [--far] [--longest 12] [--file TEXT]`.
 * - The texts are the stories of `../shared/pages/expected`, or a file.
 * - `--draw`: prints that many random sentences with their shorter versions, for a reader. Each sentence occurs once
 * over all groups.
 * - `--far`: only groups at a third. `--near`: only groups at two thirds.
 * - `--longest`: longer sentences are split (12).
 */
const flags = process.argv.slice(2);
const flagValue = (flag: string): string | undefined =>
  flags.includes(flag) ? flags[flags.indexOf(flag) + 1] : undefined;
const drawn = Number(flagValue('--draw') ?? 0);
const seed = flags[flags.indexOf('--draw') + 2] ?? '';
const longest = Number(flagValue('--longest') ?? 12);
const mark = (text: string): number => createHash('sha256').update(text).digest().readUInt32BE(0);

const folder = new URL('../../../shared/pages/expected/', import.meta.url);
const file = flagValue('--file');
const texts = file === undefined ? storyTexts() : [readFileSync(file, 'utf8')];
const engine = loadEngine();
const shortener = createShortener(
  openSwaps(readFileSync(new URL('../../public/data/swaps.bin', import.meta.url))),
);
const places = new Map<string, { order: number; before: string; found: Shortening }>();

for (const name of ['steady-steps', 'second-tide', 'england-2013']) {
  const file = new URL(`../../profiles/sequences/${name}.json`, import.meta.url);
  const sequence = parseSequence(JSON.parse(readFileSync(file, 'utf8')));
  const shares = [...(flags.includes('--near') ? [] : [1 / 3]), ...(flags.includes('--far') ? [] : [2 / 3])];
  for (const share of shares) {
    const step = Math.round(sequence.steps.length * share);
    const group = parseGroup({ name: 'Group', sequence: name, step });
    measure(name, step, createJudge(engine, compileGroup(group, sequence)));
  }
}

const rows = [...places.values()].sort((one, other) => one.order - other.order).slice(0, drawn);
for (const [i, { before, found }] of rows.entries()) {
  console.log(`${i + 1}.\n  before: ${before}\n  after:  ${found.text}`);
  if (!flags.includes('--blind')) {
    const steps = found.steps.map(({ rule, removed }) => (removed === '' ? rule : `${rule} [${removed}]`));
    console.log(`  ${found.isSafe ? 'safe: ' : ''}${steps.join('; ')}`);
  }
}

function measure(name: string, step: number, judge: Judge): void {
  const byRule = new Map<string, number>();
  let hard = 0;
  let shorter = 0;
  let safe = 0;
  let beyond = 0;
  let less = 0;
  const began = process.cpuUsage();
  const shader = createShader(judge);
  for (const text of texts) {
    const shade = shader(text);
    const count = (part: string) => {
      const words = shade(part).words.filter(({ standing }) => standing !== 'skipped');
      return { words: words.length, beyond: words.filter(({ standing }) => standing === 'beyond').length };
    };
    for (const line of text.split('\n')) {
      const sentences = findSentences(line).map(({ start, end }) => line.slice(start, end));
      for (const [i, sentence] of sentences.entries()) {
        const before = count(sentence);
        if (before.beyond === 0) continue;
        hard++;
        beyond += before.beyond;
        const next = sentences.slice(i + 1, i + 3).join(' ');
        const found = shortener.shorten(sentence, { measure: count, next, longest });
        if (!found) continue;
        shorter++;
        if (found.isSafe) safe++;
        less += before.beyond - count(found.text).beyond;
        for (const { rule } of found.steps) byRule.set(rule, (byRule.get(rule) ?? 0) + 1);
        if (!isWanted(found)) continue;
        const order = mark(`${seed} ${sentence}`);
        if (!places.has(sentence)) places.set(sentence, { order, before: sentence, found });
      }
    }
  }
  const { user } = process.cpuUsage(began);
  console.log(
    `${name} step ${step}: ${hard} sentences with words beyond, ${shorter} shorter (${safe} by safe rules), ${less} of ${beyond} words beyond gone, ${Math.round(user / 1000)} ms`,
  );
  console.log(
    `  ${[...byRule]
      .sort(([, one], [, other]) => other - one)
      .map(([rule, count]) => `${rule} ${count}`)
      .join(', ')}`,
  );
}

function isWanted(found: Shortening): boolean {
  const rule = flagValue('--rule');
  if (flags.includes('--safe') && !found.isSafe) return false;
  return rule === undefined || found.steps.some((step) => step.rule === rule);
}

function storyTexts(): string[] {
  if (!existsSync(folder)) throw new Error('There are no stories in ../shared/pages/expected.');
  return readdirSync(folder)
    .filter((file) => file.endsWith('.txt'))
    .map((file) => readFileSync(new URL(file, folder), 'utf8'));
}
