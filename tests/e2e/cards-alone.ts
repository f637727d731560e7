import { speakEnglish } from '../../src/wording/speak-english.ts';

/** What cards are made of when a test runs them in a page by themselves. */
export { openCard } from '../../src/overlay/card/open-card.tsx';
export { startCards } from '../../src/overlay/card/start-cards.ts';

speakEnglish();
