export { DRAFT_INSTRUCTIONS } from './draft-prompt.ts';
export type { DraftTask, DraftTools } from './draft-task.ts';
export { findNames } from './find-facts.ts';
export type { JudgedCandidate } from './judge-candidate.ts';
export type { JudgedDraft } from './judge-draft.ts';
export { rewriteSentence } from './rewrite-sentence.ts';
export { type AskModel, LONGEST_SENTENCE, type RewriteTask, type RewriteTools } from './rewrite-task.ts';
export { writeDraft } from './write-draft.ts';
export { INSTRUCTIONS } from './write-prompt.ts';
