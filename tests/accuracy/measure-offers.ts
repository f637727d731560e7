import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import {
  compileGroup,
  createJudge,
  type Judge,
  parseGroup,
  parseSequence,
  splitKey,
} from '../../src/analyze/index.ts';

import { loadEngine } from '../../src/cli/load-engine.ts';
import { loadSwapper } from '../../src/cli/load-swapper.ts';
import { readBrown } from '../../src/data/homographs/read-brown.ts';
import { findSentences } from '../../src/passage/find-sentences.ts';
import { createShader } from '../../src/passage/shade-line.ts';
import { reachFor } from '../../src/swap/index.ts';
import type { SwapResult } from '../../src/swap/types.ts';

/**
 * Measures how many words beyond a group get a recommended swap, for groups at a third and at two thirds of each
 * starter sequence: `npx tsx tests/accuracy/measure-offers.ts [--unseen] [--brown] [--file TEXT] [--misses 300] [--draw
 * 60 SEED]`.
 * - The texts are the stories of `../shared/pages/expected`, the held-out half of them (`--unseen`), the Brown corpus,
 * or a file.
 * - `--misses`: prints the words without an offer, the commonest first.
 * - `--draw`: prints random places with an offer, for a reader.
 */
const flags = process.argv.slice(2);
const number = (flag: string): number | null =>
  flags.includes(flag) ? Number(flags[flags.indexOf(flag) + 1]) : null;
const seed = flags[flags.indexOf('--draw') + 2] ?? '';
const mark = (text: string): number => createHash('sha256').update(text).digest().readUInt32BE(0);

const folder = new URL('../../../shared/pages/expected/', import.meta.url);
const file = flags.includes('--file') ? flags[flags.indexOf('--file') + 1]! : null;
const texts = file ? [readFileSync(file, 'utf8')] : flags.includes('--brown') ? brownTexts() : storyTexts();
const engine = loadEngine();
const swapper = loadSwapper();

for (const name of process.env.SEQ?.split(',') ?? ['steady-steps', 'second-tide', 'england-2013']) {
  const file = new URL(`../../profiles/sequences/${name}.json`, import.meta.url);
  const sequence = parseSequence(JSON.parse(readFileSync(file, 'utf8')));
  for (const share of [1 / 3, 2 / 3]) {
    const step = Math.round(sequence.steps.length * share);
    const group = parseGroup({ name: 'Group', sequence: name, step });
    measure(name, step, createJudge(engine, compileGroup(group, sequence)));
  }
}

function measure(name: string, step: number, judge: Judge): void {
  const reach = reachFor(judge);
  let beyond = 0;
  let offered = 0;
  /**
   * The number of words for which the table has any swap that the group reads, whether or not it fits the place. No
   * more words can get an offer.
   */
  let possible = 0;
  const misses = new Map<string, number>();
  const places: { order: number; line: string }[] = [];
  const shader = createShader(judge);
  for (const text of texts) {
    const shade = shader(text);
    for (const line of text.split('\n')) {
      const { words } = shade(line);
      for (const { start, end } of findSentences(line)) {
        for (const word of words) {
          if (word.start < start || word.end > end || word.standing !== 'beyond') continue;
          beyond++;
          const sentence = line.slice(start, end);
          const found = swapper.findSwaps(sentence, word.start - start, word.end - start, {
            reach,
            phrases: true,
          });
          if (found.swaps.some(({ reads }) => reads)) possible++;
          const shown = splitKey(word.key).word.toLowerCase();
          if (found.best === 0) misses.set(shown, (misses.get(shown) ?? 0) + 1);
          else {
            offered++;
            const order = mark(`${seed} ${name} ${step} ${sentence} ${word.start}`);
            places.push({ order, line: showSwap(sentence, word.start - start, word.end - start, found) });
          }
        }
      }
    }
  }
  const percent = (count: number): string => `${((100 * count) / beyond).toFixed(1)} %`;
  console.log(
    `${name} step ${step}: ${beyond} beyond, offered ${percent(offered)}, anything readable ${percent(possible)}`,
  );
  const most = number('--misses');
  if (most !== null) {
    const rows = [...misses].sort(([a, n], [b, m]) => m - n || (a < b ? -1 : 1)).slice(0, most);
    console.log(rows.map(([word, count]) => `${word} ${count}`).join(', '));
  }
  const drawn = number('--draw');
  if (drawn !== null) {
    const rows = places.sort((one, other) => one.order - other.order).slice(0, drawn);
    console.log(rows.map(({ line }) => line).join('\n'));
  }
}

/** Returns the sentence with the word marked, and the sentence with the first swap in place of the word. */
function showSwap(sentence: string, start: number, end: number, { swaps }: SwapResult): string {
  const { text, article, span = { start, end } } = swaps[0]!;
  const before = article
    ? `${sentence.slice(0, article.start)}${article.text}${sentence.slice(article.end, span.start)}`
    : sentence.slice(0, span.start);
  const marked = `${sentence.slice(0, start)}[${sentence.slice(start, end)}]${sentence.slice(end)}`;
  return `${marked}\t${before}[${text}]${sentence.slice(span.end)}`;
}

function storyTexts(): string[] {
  if (!existsSync(folder)) throw new Error('There are no stories in ../shared/pages/expected.');
  const isKept = (file: string): boolean => mark(file) % 2 === 0;
  return readdirSync(folder)
    .filter((file) => file.endsWith('.txt') && isKept(file) === flags.includes('--unseen'))
    .map((file) => readFileSync(new URL(file, folder), 'utf8'));
}

/** Returns every fifth sentence of the Brown corpus as a text. */
function brownTexts(): string[] {
  const sentences = (readBrown() ?? []).filter((_, i) => i % 5 === 0);
  return sentences.map((words) =>
    words
      .map(({ word }) => word)
      .join(' ')
      .replace(/ ([.,;:!?])/g, '$1'),
  );
}
