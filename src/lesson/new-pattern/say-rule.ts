import type { Pattern } from '../../analyze/types.ts';
import { soundName } from '../../marks/sound-names.ts';
import rules from './rules.json' with { type: 'json' };

const byId: Readonly<Record<string, string>> = rules;

/**
 * The rule of a pattern in a sentence or two to say to a child: that of `rules.json` (trade facts, common practice, no source), in
 * which {l} is the letters and {s} their sound; else what is true of any spelling, ending or blend.
 */
export function sayRule({ id, family, letters, sounds }: Pattern): string {
  const spelt = letters.split(' ')[0] ?? '';
  const sound = soundName(sounds[0] ?? '-');
  if (Object.hasOwn(byId, id)) return byId[id]!.replaceAll('{l}', spelt).replaceAll('{s}', sound);
  if (family === 'initial blend' && spelt)
    return `At the start of a word, ${spelt} is said fast, and each sound is heard.`;
  if (family === 'final blend' && spelt)
    return `At the end of a word, ${spelt} is said fast, and each sound is heard.`;
  if (family.endsWith(' blend')) return 'The consonants are said fast, and each sound is heard.';
  if (family === 'prefix' && sounds.length === 0) return `Many words from Latin begin with ${spelt}-.`;
  if (spelt.length === 1) return `The letter ${spelt} says ${sound}.`;
  return `The letters ${spelt} work together and say ${sound}.`;
}
