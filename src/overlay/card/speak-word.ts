import { say } from '../../wording/say.ts';

/**
 * Says a word with an English voice of this machine. A voice that works over the network is never asked: the word
 * would leave the machine.
 * @throws An Error in one sentence where there is no such voice.
 */
export async function speakWord(word: string): Promise<void> {
  const { speechSynthesis } = globalThis;
  if (!speechSynthesis) throw new Error(say('card.cannotSpeak'));
  if (speechSynthesis.getVoices().length === 0) await voicesListed(speechSynthesis);
  const voice = speechSynthesis
    .getVoices()
    .filter(({ localService, lang }) => localService && /^en\b/i.test(lang))
    .sort((a, b) => Number(b.default) - Number(a.default))[0];
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
