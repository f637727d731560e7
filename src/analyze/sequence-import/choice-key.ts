/**
 * Returns the key under which a teacher's choice about an item is saved: the item's text without details that vary from
 * document to document. `"1. Ai – rain "` and `"ai - rain"` have the same key, `"-er"` and `"er"` do not.
 */
export function choiceKey(text: string): string {
  return text
    .normalize('NFC')
    .toLowerCase()
    .replace(/[\u2010-\u2015]/g, '-')
    .replace(/[\u2018\u2019\u02bc]/g, "'")
    .replace(/[“”"]/g, '')
    .replace(/^\s*\(?\d{1,3}[.)]\s+/, '')
    .replace(/\s+/g, ' ')
    .trim();
}
