import { createCandidateJudge, type JudgedCandidate, rankCandidates } from './judge-candidate.ts';
import { readAnswer } from './read-answer.ts';
import type { AskModel, RewriteTask, RewriteTools } from './rewrite-task.ts';
import { ANSWER_SCHEMA, writePrompt } from './write-prompt.ts';

/** Hard words are sent back at most so often. */
const SENT_BACK = 3;
/** So many are shown to the teacher. */
const SHOWN = 3;

/**
 * Rewritings of a sentence that the engine lets pass, best first; none where the model gave nothing that helps. What it
 * answers with words that are still too hard is sent back to it. Rejects when the model does, or when it is aborted.
 */
export async function rewriteSentence(
  task: RewriteTask,
  tools: RewriteTools,
  ask: AskModel,
  signal: AbortSignal,
): Promise<JudgedCandidate[]> {
  const judge = createCandidateJudge(task, tools);
  const judged: JudgedCandidate[] = [];
  let tried: readonly string[] = [];
  for (let round = 0; round <= SENT_BACK; round++) {
    signal.throwIfAborted();
    const answer = await ask(writePrompt(task, tools, tried), ANSWER_SCHEMA, signal);
    signal.throwIfAborted();
    const candidates = readAnswer(answer).map(judge);
    judged.push(...candidates);
    if (judged.some(({ unfit, hard }) => unfit === null && hard.length === 0)) break;
    tried = candidates.filter(({ hard }) => hard.length > 0).map(({ text }) => text);
    // Nothing with hard words came: to ask the same again gives the same.
    if (tried.length === 0) break;
  }
  return rankCandidates(judged).slice(0, SHOWN);
}
