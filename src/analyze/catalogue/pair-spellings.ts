/**
 * Pairs the letters and sounds of a catalogue row. They are paired one to one if there are as many sounds as spellings
 * of different consonants (`ne te` with `N T`). Otherwise each spelling is paired with each sound.
 */
export function pairSpellings(letters: string, sounds: readonly string[]): [string, string][] {
  const spellings = letters.split(' ').filter((one) => one !== '');
  if (spellings.length > 2 && spellings.length === sounds.length) {
    return spellings.map((one, i) => [one, sounds[i]!]);
  }
  return spellings.flatMap((one) => sounds.map((sound): [string, string] => [one, sound]));
}
