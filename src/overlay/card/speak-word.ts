import type { Accent } from '../../analyze/types.ts';
import { say } from '../../wording/say.ts';

/**
 * Says a word with an English voice of this machine, with the group's accent if possible. Voices that work over the
 * network are never used, because the word would leave the machine.
 * @throws An Error in one sentence if there is no such voice.
 */
export async function speakWord(word: string, accent: Accent = 'american'): Promise<void> {
  const { speechSynthesis } = globalThis;
  if (!speechSynthesis) throw new Error(say('card.cannotSpeak'));
  if (speechSynthesis.getVoices().length === 0) await voicesListed(speechSynthesis);
  const voice = speechSynthesis
    .getVoices()
    .filter(({ localService, lang }) => localService && /^en\b/i.test(lang))
    .sort((a, b) => near(b.lang, accent) - near(a.lang, accent) || Number(b.default) - Number(a.default))[0];
  if (!voice) throw new Error(say('card.noVoice'));
  const utterance = new SpeechSynthesisUtterance(word);
  utterance.voice = voice;
  utterance.lang = voice.lang;
  utterance.rate = 0.85;
  speechSynthesis.cancel();
  speechSynthesis.speak(utterance);
}

/** Voice languages for each accent, the nearest first. */
const VOICES: Readonly<Record<Accent, readonly RegExp[]>> = {
  american: [/^en[-_]US/i, /^en[-_]CA/i],
  british: [/^en[-_](GB|UK)/i, /^en[-_](AU|NZ|IE)/i],
};

function near(lang: string, accent: Accent): number {
  const place = VOICES[accent].findIndex((one) => one.test(lang));
  return place === -1 ? 0 : 2 - place;
}

/**
 * Browsers list their voices only some time after the first request. Some never send the event when there are no
 * voices.
 */
function voicesListed(synthesis: SpeechSynthesis): Promise<unknown> {
  return new Promise((resolve) => {
    synthesis.addEventListener('voiceschanged', resolve, { once: true });
    setTimeout(resolve, 1000);
  });
}
