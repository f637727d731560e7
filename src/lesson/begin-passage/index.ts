export {
  type BegunPassage,
  beginPassage,
  FEWEST_WORDS,
  MOST_WORDS,
  type PassageWish,
} from './begin-passage.ts';
export { drawStory, type Story } from './draw-story.ts';
