import { speakEnglish } from '../../src/wording/speak-english.ts';

/** What cards are made of when a test runs them in a page by themselves. */
export { openCard } from '../../src/card/open-card.tsx';
export { startCards } from '../../src/card/start-cards.ts';

speakEnglish();
