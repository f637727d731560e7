import { english } from './en.ts';
import { listMessages } from './list-messages.ts';
import { sayFrom } from './say.ts';

/** Uses the English texts from now on. It is for commands and tests, where no browser can look texts up. */
export function speakEnglish(): void {
  sayFrom(listMessages('en', english));
}
