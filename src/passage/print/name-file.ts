import { cleanText } from './clean-text.ts';

const LONGEST = 80;

/**
 * Returns the name of a passage's file: the title and the group's name. Characters that cause trouble for file systems
 * or readers are removed: `Who? Me!` becomes `Who Me!`. A name that Windows reserves, such as CON, gets an underscore
 * in front.
 * @param extension Without its dot.
 */
export function nameFile(title: string, group: string | null, extension: string): string {
  const name = [title, group ?? '']
    .map((part) =>
      cleanText(part)
        .replace(/\p{Cf}/gu, '')
        .replace(/[\\/:*?"<>|]/g, ' ')
        .replace(/\s+/g, ' ')
        .trim(),
    )
    .filter((part) => part !== '')
    .join(' - ');
  const short = [...name]
    .slice(0, LONGEST)
    .join('')
    .replace(/^[.\s]+|[.\s]+$/g, '');
  const safe = /^(con|prn|aux|nul|com\d|lpt\d)$/i.test(short.split('.')[0]!) ? `_${short}` : short;
  return `${safe || 'Passage'}.${extension}`;
}
