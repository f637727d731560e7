import type { Accent, Group, Pattern, Sequence } from '../types.ts';

/** The pronunciation used for a group. */
export interface Speech {
  readonly accent: Accent;
  /** The a of bath and grass in British: as in father (the south of England) or as in cat (the north). */
  readonly bath: 'father' | 'cat';
}

/** The default pronunciation. */
export const AMERICAN: Speech = { accent: 'american', bath: 'cat' };

/** Returns the accent of a group. A group without one was stored or saved by an earlier version and is American. */
export function accentOf({ accent = 'american' }: Pick<Group, 'accent'>): Accent {
  return accent;
}

/** Returns the pronunciation used for a group. American English has only one pronunciation of bath. */
export function speechOf(group: Pick<Group, 'accent' | 'options'>): Speech {
  if (accentOf(group) === 'american') return AMERICAN;
  return { accent: 'british', bath: group.options.bath ?? 'father' };
}

/** The accent whose sounds are written down, and the notation. */
export interface SoundStyle {
  readonly accent: Accent;
  readonly marks: 'dictionary' | 'ipa';
}

/** Returns the notation of sounds for a group. */
export function soundStyleOf(group: Pick<Group, 'accent' | 'options'>): SoundStyle {
  return { accent: accentOf(group), marks: group.options.soundMarks ?? 'dictionary' };
}

/** Returns the sounds of a catalogue row in an accent. The sound of the row's key word comes first. */
export function soundsIn(
  { sounds, british }: Pick<Pattern, 'sounds' | 'british'>,
  accent: Accent,
): readonly string[] {
  return accent === 'british' ? (british ?? sounds) : sounds;
}

/**
 * Returns the default accent of a new group. If the sequence names an accent, that accent is used. Otherwise the
 * language of the reader decides (`en-GB`): British in Britain, Ireland, Australia and New Zealand, American everywhere
 * else.
 */
export function defaultAccent(locale: string, sequence?: Pick<Sequence, 'accent'> | null): Accent {
  if (sequence?.accent) return sequence.accent;
  return /^en[-_](?:[a-z]{4}[-_])?(?:GB|UK|AU|NZ|IE)\b/i.test(locale) ? 'british' : 'american';
}
