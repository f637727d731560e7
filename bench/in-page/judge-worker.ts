import { markReading } from '../../src/analyze/index.ts';
import type { WordsAsked, WordsJudged } from '../../src/contract/page-contract.ts';
import { openJudges } from './open-judges.ts';

/** The messages to the worker: first the table and the sequence, and then the questions. */
export type ToJudge =
  | { readonly table: Uint8Array; readonly sequence: unknown }
  | { readonly id: number; readonly step: number; readonly words: WordsAsked };

/** Returns the judge for a step. This worker has the part of the background, on a thread of its own as in the extension. */
let judgeAt: ReturnType<typeof openJudges>;

addEventListener('message', ({ data }: MessageEvent<ToJudge>) => {
  if ('table' in data) {
    judgeAt = openJudges(data.table, data.sequence);
    return;
  }
  const { id, step, words } = data;
  const judge = judgeAt(step);
  const judged: WordsJudged = {
    standings: words.keys.map((key) => judge(key).standing),
    readings: words.homographs
      .map(({ text, start, end, key }) => markReading(text, start, end, key))
      .map((key) => ({ key, standing: judge(key).standing })),
  };
  postMessage({ id, judged });
});
