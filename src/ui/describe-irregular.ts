import type { SoundStyle } from '../analyze/index.ts';
import type { Unit } from '../analyze/types.ts';
import { soundName } from '../marks/sound-names.ts';
import { say } from '../wording/say.ts';

/**
 * Describes the irregular part of a word, for which the word is learnt by sight: `the ai says ĕ` (said). Returns an
 * empty string for a regular word.
 */
export function describeIrregular(units: readonly Unit[], style?: SoundStyle): string {
  return units
    .filter(({ pattern }) => pattern === 'irregular')
    .map(({ letters, sound }) =>
      sound === '-'
        ? say('ui.isSilent', { letters })
        : say('ui.saysSound', { letters, sound: soundName(sound, style) }),
    )
    .join(', ');
}
