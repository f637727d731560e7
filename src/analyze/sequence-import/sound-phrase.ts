import { coarseRows } from '../catalogue/catalogue.ts';
import type { Phrase } from './phrases.ts';
import { soundsByName } from './sound-names.ts';
import { findSpelling } from './spellings.ts';

/**
 * Returns a sound as a heading for its spellings. Alone it means its letters (`/sh/`) or its usual pattern. An unknown
 * sound has no patterns, and the teacher is asked.
 */
export function soundPhrase(name: string): Phrase {
  const sounds = soundsByName.get(name) ?? [];
  const within = coarseRows
    .filter((row) => row.sounds.some((sound) => sounds.includes(sound)))
    .map(({ id }) => id);
  const letters = findSpelling(name, 'none');
  if (letters !== null) {
    const said = letters.usual.filter((id) => within.includes(id));
    const ids = said.length > 0 ? said : letters.usual;
    // `/ow/` leaves one meaning of ow. `/oo/` leaves two meanings of oo.
    return { ids, sure: letters.sure || said.length === 1, sound: true, within: new Set(within), keeps: [] };
  }
  const [plain = '', sign = ''] = name.normalize('NFD');
  const vowel = sign === '\u0304' ? `long-${plain}` : sign === '\u0306' ? `short-${plain}` : '';
  const ids = within.includes(vowel)
    ? [vowel]
    : vowel === 'long-u'
      ? ['long-u-yoo', 'long-u-oo']
      : // For `/är/`, a row that has its first sound.
        coarseRows
          .filter((row) => row.sounds.includes(sounds[0]!))
          .slice(0, 1)
          .map(({ id }) => id);
  return { ids, sure: vowel.startsWith('short-'), sound: true, within: new Set(within), keeps: [] };
}
