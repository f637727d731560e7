import { spokenDirection, spokenLanguage } from '../wording/say.ts';

/** Sets the title, the language and the text direction of a page of the extension. */
export function startPage(title: string): void {
  document.title = title === 'Wordreach' ? title : `${title} · Wordreach`;
  document.documentElement.lang = spokenLanguage();
  document.documentElement.dir = spokenDirection();
}
