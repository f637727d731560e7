import { type SoundStyle, soundsIn } from '../../analyze/index.ts';
import type { Pattern, PatternId } from '../../analyze/types.ts';
import { soundName } from '../../marks/sound-names.ts';
import type { WordBank } from '../word-bank.ts';
import type { ListedWord } from '../word-lists/listed-words.ts';
import opaque from './opaque-words.json' with { type: 'json' };
import rules from './rules.json' with { type: 'json' };

const byId: Readonly<Record<string, string>> = rules;

/**
 * Returns the rule of a pattern in a sentence or two to say to a child. The rule is from `rules.json` (trade facts,
 * common practice, no source), in which {l} is the letters and {s} their sound. For other patterns it is a rule that
 * holds for any spelling, ending or blend.
 */
export function sayRule(row: Pattern, style: SoundStyle): string {
  const { id, family, letters } = row;
  const sounds = soundsIn(row, style.accent);
  const spelt = letters.split(' ')[0] ?? '';
  const sound = soundName(sounds[0] ?? '-', style);
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

/** Words whose beginning or ending does not mean what its rule says (cracker, understand). Chosen from the bank by hand. */
const notSo: ReadonlySet<string> = new Set(opaque.words.split(' '));

/**
 * The kind of base to which the rule of an ending applies: `box` for -es, not `size`; `light` for -en, not `eat`;
 * `walk` for -ed, not `skill`.
 */
const BASES: readonly {
  readonly endings: RegExp;
  readonly isFit: (base: string, parts: string) => boolean;
}[] = [
  { endings: /^suffix-es$/, isFit: (base) => /(?:s|x|z|ch|sh)$/.test(base) },
  { endings: /^suffix-(?:ed-(?:t|d|id)|ing)$/, isFit: (_, parts) => parts.includes('v') },
  { endings: /^suffix-en$/, isFit: (_, parts) => !parts.startsWith('v') },
  {
    endings: /^suffix-th$/,
    isFit: (base) => /^(?:four|five|six|seven|eight|nine|ten|hundred)$|teen$/.test(base),
  },
];

/** Whether the meaning given in the rule of a beginning or an ending is true of a word. */
export function isMeaningTrueOf(
  id: PatternId,
  { word, base }: { readonly word: string; readonly base: string | null },
  bank: WordBank,
): boolean {
  if (notSo.has(word)) return false;
  const parts = bank.find(base ?? '')?.parts ?? '';
  return BASES.every(({ endings, isFit }) => !endings.test(id) || isFit(base ?? '', parts));
}

/**
 * Whether the place given in the rule is true of a word. The place `at the end of a short word` is true of sky, but not
 * of supply.
 */
export function isRuleTrueOf({ id, letters }: Pattern, { reading, syllables }: ListedWord): boolean {
  const rule = Object.hasOwn(byId, id) ? byId[id]! : '';
  const own = reading.units.filter(({ pattern }) => pattern === id);
  if (/\bshort word\b/.test(rule) && syllables > 1) return false;
  if (/^At the end of (?:a|some)\b.*\bwords?\b/.test(rule) && reading.units.at(-1)?.pattern !== id)
    return false;
  if (/^At the end of a longer word\b/.test(rule) && syllables < 2) return false;
  if (
    /^When a (?:word or )?syllable ends with\b/.test(rule) &&
    !reading.syllables.some(
      ({ text, type }) => type === 'open' && letters.split(' ').some((one) => text.endsWith(one)),
    )
  )
    return false;
  if (/^At the start of a word,/.test(rule) && reading.units[0]?.pattern !== id) return false;
  if (!/\bclosed syllable\b|\bconsonant closes the syllable\b/.test(rule)) return true;
  return reading.syllables.every(
    ({ text, type }) =>
      type === 'closed' || !letters.split(' ').some((one) => text.includes(one)) || own.length === 0,
  );
}
