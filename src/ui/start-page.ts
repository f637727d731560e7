import { spokenDirection, spokenLanguage } from '../wording/say.ts';

/** Gives a page of the extension its title, and says which language it is in and which way that runs. */
export function startPage(title: string): void {
  document.title = title === 'Wordreach' ? title : `${title} · Wordreach`;
  document.documentElement.lang = spokenLanguage();
  document.documentElement.dir = spokenDirection();
}
