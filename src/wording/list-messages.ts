import type { Text } from './translation.ts';

/** A message as browsers want it in `_locales`. */
export type Messages = Record<string, { readonly message: string }>;

/**
 * The texts of one language as browsers read them from `_locales/<language>/messages.json`: `panel.words` is `panel_words`, a form of
 * it `panel_words_one`. No text may have a `$`, which a browser takes for a hole of its own.
 */
export function listMessages(
  language: string,
  parts: Readonly<Record<string, Readonly<Record<string, Text>>>>,
): Messages {
  const messages: Messages = { language: { message: language } };
  for (const [part, texts] of Object.entries(parts)) {
    for (const [name, text] of Object.entries(texts)) {
      const forms = typeof text === 'string' ? { other: text } : text;
      for (const [form, message] of Object.entries(forms)) {
        const whole = `${part}_${name}`;
        messages[form === 'other' ? whole : `${whole}_${form}`] = {
          message: message.replaceAll('$', '$$$$'),
        };
      }
    }
  }
  return messages;
}
