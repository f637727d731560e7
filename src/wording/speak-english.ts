import { english } from './en.ts';
import { listMessages } from './list-messages.ts';
import { sayFrom } from './say.ts';

/**
 * Uses the English texts from now on. Commands and tests call this function, because they have no browser that can look
 * up texts.
 */
export function speakEnglish(): void {
  sayFrom(listMessages('en', english));
}
