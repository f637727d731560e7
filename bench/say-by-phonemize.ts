import { createRequire } from 'node:module';
import { soundsOfIpa } from './sounds-of-ipa.ts';

interface Speaker {
  predict(word: string, language: 'en'): string | null;
}

// The module of phonemize for `import` reads JSON in a way that Node 20 refuses, and has no types.
const { EnglishG2P } = createRequire(import.meta.url)('phonemize/en-g2p') as {
  EnglishG2P: new (options: { readonly disableDict: boolean }) => Speaker;
};

/** Pronounces a word as phonemize does: by its rules alone, or by its list of 57,000 words if the word is in the list. */
export function sayByPhonemize(rulesOnly: boolean): (word: string) => string {
  const speaker = new EnglishG2P({ disableDict: rulesOnly });
  return (word) => soundsOfIpa(speaker.predict(word, 'en') ?? '');
}
