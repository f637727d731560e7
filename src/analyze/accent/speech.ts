import type { Accent, Group, Pattern, Sequence } from '../types.ts';

/** How words are said to a group. */
export interface Speech {
  readonly accent: Accent;
  /** The a of bath and grass in British: as in father (the south of England) or as in cat (the north). */
  readonly bath: 'father' | 'cat';
}

/** How words are said where nobody says otherwise. */
export const AMERICAN: Speech = { accent: 'american', bath: 'cat' };

/** The accent of a group; a group that does not say it (stored or saved by an earlier version) is American. */
export function accentOf({ accent = 'american' }: Pick<Group, 'accent'>): Accent {
  return accent;
}

/** How words are said to a group. American has one way to say bath. */
export function speechOf(group: Pick<Group, 'accent' | 'options'>): Speech {
  if (accentOf(group) === 'american') return AMERICAN;
  return { accent: 'british', bath: group.options.bath ?? 'father' };
}

/** Whose sounds are written down, and how. */
export interface SoundStyle {
  readonly accent: Accent;
  readonly marks: 'dictionary' | 'ipa';
}

/** How sounds are written down for a group. */
export function soundStyleOf(group: Pick<Group, 'accent' | 'options'>): SoundStyle {
  return { accent: accentOf(group), marks: group.options.soundMarks ?? 'dictionary' };
}

/** The sounds of a row of the catalogue, that of its key word first. */
export function soundsIn(
  { sounds, british }: Pick<Pattern, 'sounds' | 'british'>,
  accent: Accent,
): readonly string[] {
  return accent === 'british' ? (british ?? sounds) : sounds;
}

/**
 * The accent a new group has at first: that of its sequence, where it says one, or else that of the reader's language
 * (`en-GB`): British in Britain, Ireland, Australia and New Zealand, American everywhere else.
 */
export function defaultAccent(locale: string, sequence?: Pick<Sequence, 'accent'> | null): Accent {
  if (sequence?.accent) return sequence.accent;
  return /^en[-_](?:[a-z]{4}[-_])?(?:GB|UK|AU|NZ|IE)\b/i.test(locale) ? 'british' : 'american';
}
