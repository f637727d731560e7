export { walkAndCut } from './floor.ts';
export { markWords, unmarkWords } from './mark-words.ts';
export { openEngine } from './whole-engine.ts';
