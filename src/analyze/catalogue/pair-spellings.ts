/**
 * Letters and sounds of a catalogue row, paired: one by one when there are as many sounds as
 * spellings of different consonants (`ne te` with `N T`), else each spelling with each sound.
 */
export function pairSpellings(letters: string, sounds: readonly string[]): [string, string][] {
  const spellings = letters.split(' ').filter((one) => one !== '');
  if (spellings.length > 2 && spellings.length === sounds.length) {
    return spellings.map((one, i) => [one, sounds[i]!]);
  }
  return spellings.flatMap((one) => sounds.map((sound): [string, string] => [one, sound]));
}
