import { cleanText } from './clean-text.ts';

const LONGEST = 80;

/**
 * The name of a passage's file: its title and the group's name, without signs that file systems or readers stumble over (`Who? Me!` is `Who Me!`; names that Windows keeps for itself, such as CON, get a line before them).
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
