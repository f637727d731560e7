import type { SoundStyle } from '../analyze/index.ts';
import type { Unit } from '../analyze/types.ts';
import { soundName } from '../marks/sound-names.ts';
import { say } from '../wording/say.ts';

/** The irregular part of a word, for which it is learnt by sight: `the ai says ĕ` (said); empty for a regular word. */
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
