export { findNames } from './find-facts.ts';
export type { JudgedCandidate } from './judge-candidate.ts';
export { rewriteSentence } from './rewrite-sentence.ts';
export type { AskModel, RewriteTask, RewriteTools } from './rewrite-task.ts';
export { INSTRUCTIONS } from './write-prompt.ts';
