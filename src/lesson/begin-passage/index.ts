export { type BegunPassage, beginPassage, type PassageWish } from './begin-passage.ts';
