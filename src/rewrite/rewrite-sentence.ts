import { createCandidateJudge, type JudgedCandidate, rankCandidates } from './judge-candidate.ts';
import { readAnswer } from './read-answer.ts';
import type { AskModel, RewriteTask, RewriteTools } from './rewrite-task.ts';
import { ANSWER_SCHEMA, writePrompt } from './write-prompt.ts';

/** How many times answers with hard words are sent back to the model at most. */
export const SENT_BACK = 3;
/** How many rewritings are shown to the teacher at most. */
const SHOWN = 3;

/**
 * Returns the rewritings of a sentence that the engine accepts, best first. The list is empty if the model gave nothing
 * useful. Answers with words that are still too hard are sent back to the model. Rejects when the model rejects or the
 * signal is aborted.
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
    // No answer had hard words to send back. The same question would give the same answer.
    if (tried.length === 0) break;
  }
  return rankCandidates(judged).slice(0, SHOWN);
}
