export { catalogue } from './catalogue/catalogue.ts';
export { type Lexicon, openLexicon } from './lexicon/open-lexicon.ts';
export { compileGroup } from './standing/compile-group.ts';
export { GroupError } from './standing/group-error.ts';
export { createJudge, type Judge } from './standing/judge.ts';
export { parseGroup } from './standing/parse-group.ts';
export { parseSequence } from './standing/parse-sequence.ts';
export { vet } from './standing/vet.ts';
export { type Analyzer, createAnalyzer } from './word/create-analyzer.ts';
