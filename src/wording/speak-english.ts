import { english } from './en.ts';
import { listMessages } from './list-messages.ts';
import { sayFrom } from './say.ts';

/** Takes the English texts from here on, where no browser is there to look texts up: in commands and tests. */
export function speakEnglish(): void {
  sayFrom(listMessages('en', english));
}
