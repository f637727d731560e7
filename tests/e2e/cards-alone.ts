import { english } from '../../src/wording/en.ts';
import { listMessages } from '../../src/wording/list-messages.ts';
import { sayFrom } from '../../src/wording/say.ts';

/** What cards are made of when a test runs them in a page by themselves. */
export { openCard } from '../../src/card/open-card.tsx';
export { startCards } from '../../src/card/start-cards.ts';

// No extension is there to look texts up.
sayFrom(listMessages('en', english));
