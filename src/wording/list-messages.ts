import type { Text } from './translation.ts';

/** Messages in the format that browsers require in `_locales`. */
export type Messages = Record<string, { readonly message: string }>;

/**
 * Lists the texts of one language as browsers read them from `_locales/<language>/messages.json`. `panel.words` becomes
 * `panel_words`, and a form of this text becomes `panel_words_one`. Each `$` in a text is doubled, because a browser
 * reads a single `$` as one of its own placeholders.
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
