import speak from 'espeak-ng';
import { processorTime } from './processor-time.ts';
import { soundsOfIpa } from './sounds-of-ipa.ts';

/** Words a minute: the quickest it has, so that the speech it makes beside the sounds is short, and one to compare with. */
const QUICK = 450;
const SLOW = 150;

/**
 * Words as espeak-ng says them (its build for WebAssembly, voice en-us), each by itself, and the processor's seconds it
 * took to find the sounds. Its command makes the speech as well, even where nobody asks for it; what that takes is
 * found by speaking some of the words slowly, and taken off like its start.
 */
export async function sayByEspeak(
  words: readonly string[],
): Promise<{ readonly sounds: readonly string[]; readonly seconds: number }> {
  const some = words.filter((_, i) => i % 8 === 0);
  const start = await processorTime(() => run(words.slice(0, 1), QUICK));
  const [quick, slow] = [await sayAloud(some, QUICK), await sayAloud(some, SLOW)];
  const perSample = (slow.seconds - quick.seconds) / (slow.samples - quick.samples);
  const speech = perSample * quick.samples * (words.length / some.length);
  const { result, seconds } = await processorTime(() => run(words, QUICK));
  if (result.said.length !== words.length)
    throw new Error(`espeak-ng said ${result.said.length} words of ${words.length}; give each its own line.`);
  return { sounds: result.said.map(soundsOfIpa), seconds: seconds - start.seconds - speech };
}

/** The time of speaking without keeping the speech, and its number of samples. */
async function sayAloud(
  words: readonly string[],
  rate: number,
): Promise<{ readonly seconds: number; readonly samples: number }> {
  const { seconds } = await processorTime(() => run(words, rate));
  return { seconds, samples: (await run(words, rate, ['-w', 'speech'])).bytes / 2 };
}

/** The package is its command: it reads a file of its own file system, runs once and leaves another there. */
async function run(
  words: readonly string[],
  rate: number,
  output: readonly string[] = ['-q'],
): Promise<{ readonly said: readonly string[]; readonly bytes: number }> {
  const { FS } = await speak({
    arguments: [
      ...output,
      ...['--ipa', '--sep=_', '-v', 'en-us', '-s', String(rate), '--phonout', 'said', '-f', 'words'],
    ],
    preRun: [(module) => module.FS.writeFile('words', words.join('\n\n'))],
  });
  return {
    said: FS.readFile('said', { encoding: 'utf8' }).trim().split('\n'),
    bytes: output[0] === '-w' ? FS.stat('speech').size : 0,
  };
}
