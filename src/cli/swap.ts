import { parseArgs } from 'node:util';
import { createJudge } from '../analyze/index.ts';
import { reachFor, type Swapper } from '../swap/index.ts';
import type { SwapOptions } from '../swap/types.ts';
import { loadEngine } from './load-engine.ts';
import { loadGroup } from './load-group.ts';
import { loadSwapper } from './load-swapper.ts';
import { readText } from './read-file.ts';
import { calledAs, InputError, runCommand } from './run-command.ts';

const usage = `Usage: ${calledAs('swap')} --json (--group GROUPFILE | --all)   (lines of {"sentence","start","end"} on stdin)`;

await runCommand(usage, () => {
  const { values, positionals } = parseArgs({
    allowPositionals: true,
    options: {
      json: { type: 'boolean', default: false },
      all: { type: 'boolean', default: false },
      group: { type: 'string' },
    },
  });
  if (positionals.length > 0) throw new InputError(`Sentences come on stdin.\n${usage}`);
  if (values.group === undefined && !values.all)
    throw new InputError(`Give a group, or --all for everybody.\n${usage}`);
  const options = values.group === undefined || values.all ? {} : optionsFor(values.group);
  const swapper = loadSwapper();
  const lines = readText('-').split('\n');
  return lines
    .filter((line) => line.trim() !== '')
    .map((line) => JSON.stringify(answer(line, swapper, options)))
    .join('\n');
});

function optionsFor(path: string): SwapOptions {
  const judge = createJudge(loadEngine(), loadGroup(path).compiled);
  return { reach: reachFor(judge) };
}

/** Answers one line of input. A faulty line gets an error as its answer, so that the other lines are not lost. */
function answer(line: string, swapper: Swapper, options: SwapOptions): unknown {
  let asked: unknown;
  try {
    asked = JSON.parse(line);
  } catch {
    return { error: 'This line is no JSON: give {"sentence","start","end"}.' };
  }
  const { sentence, start, end } = (asked ?? {}) as Record<string, unknown>;
  if (typeof sentence !== 'string') return { error: 'There is no "sentence" in this line.' };
  if (!isPlace(start, sentence) || !isPlace(end, sentence) || start >= end) {
    return { error: 'Give "start" and "end" as whole numbers inside the sentence, the start first.' };
  }
  const { word, swaps, best } = swapper.findSwaps(sentence, start, end, options);
  return {
    word,
    swaps: swaps.map(({ text, reads, score, article }) => ({ text, reads, score, article })),
    best,
  };
}

function isPlace(value: unknown, sentence: string): value is number {
  return Number.isInteger(value) && (value as number) >= 0 && (value as number) <= sentence.length;
}
