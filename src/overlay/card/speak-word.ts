import type { Accent } from '../../analyze/types.ts';
import { say } from '../../wording/say.ts';

/** Voices that speak with an accent, by their language. */
const VOICES: Readonly<Record<Accent, RegExp>> = {
  american: /^en[-_]US\b/i,
  british: /^en[-_](?:GB|AU|NZ|IE)\b/i,
};

/**
 * Says a word with an English voice of this machine, one with the accent where there is one. A voice that works over the network is never asked: the word
 * would leave the machine.
 * @throws An Error in one sentence where there is no such voice.
 */
export async function speakWord(word: string, accent: Accent): Promise<void> {
  const { speechSynthesis } = globalThis;
  if (!speechSynthesis) throw new Error(say('card.cannotSpeak'));
  if (speechSynthesis.getVoices().length === 0) await voicesListed(speechSynthesis);
  const rank = ({ lang, default: isDefault }: SpeechSynthesisVoice): number =>
    2 * Number(VOICES[accent].test(lang)) + Number(isDefault);
  const voice = speechSynthesis
    .getVoices()
    .filter(({ localService, lang }) => localService && /^en\b/i.test(lang))
    .sort((a, b) => rank(b) - rank(a))[0];
  if (!voice) throw new Error(say('card.noVoice'));
  const utterance = new SpeechSynthesisUtterance(word);
  utterance.voice = voice;
  utterance.lang = voice.lang;
  utterance.rate = 0.85;
  speechSynthesis.cancel();
  speechSynthesis.speak(utterance);
}

/** Browsers list their voices only some time after they are first asked; some never tell, when there are none. */
function voicesListed(synthesis: SpeechSynthesis): Promise<unknown> {
  return new Promise((resolve) => {
    synthesis.addEventListener('voiceschanged', resolve, { once: true });
    setTimeout(resolve, 1000);
  });
}
