import { measureLetterToSound } from './letter-to-sound.ts';

/** Prints the speed and the errors of pronouncing words that nobody listed, for our guesser and for general packages. */
const { words, figures } = await measureLetterToSound(3);
const ours = figures[0]!;
console.log(`${words.toLocaleString('en')} words that our table and model never met`);
for (const { name, speed, errors, looseErrors } of figures)
  console.log(
    `${name.padEnd(32)} ${(ours.speed / speed).toFixed(2).padStart(6)}   ${speed.toLocaleString('en')} words/s of a processor; wrong ${percent(errors)}, accents merged ${percent(looseErrors)}`,
  );

function percent(share: number): string {
  return `${(100 * share).toFixed(1)} %`;
}
