export { composeSentences, type SentenceWish } from './compose-sentences.ts';
