import speak from 'espeak-ng';
import { processorTime } from './processor-time.ts';
import { soundsOfIpa } from './sounds-of-ipa.ts';

/**
 * Words per minute. The first is the quickest speed of espeak-ng, so that the speech made beside the sounds is short.
 * The second is for comparison.
 */
const QUICK = 450;
const SLOW = 150;

/**
 * Pronounces each word by itself as espeak-ng does (its build for WebAssembly, voice en-us). Returns the sounds, and
 * the processor seconds needed to find the sounds. The command of espeak-ng makes the speech as well, even if nobody
 * asks for it. The cost of the speech is found by speaking some of the words slowly. This cost and the cost of the
 * start are subtracted.
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

/** Returns the time of speaking when the speech is not kept, and the number of samples of the speech. */
async function sayAloud(
  words: readonly string[],
  rate: number,
): Promise<{ readonly seconds: number; readonly samples: number }> {
  const { seconds } = await processorTime(() => run(words, rate));
  return { seconds, samples: (await run(words, rate, ['-w', 'speech'])).bytes / 2 };
}

/**
 * Runs the package, which is a command. The command reads a file of its own file system, runs once, and leaves another
 * file there.
 */
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
