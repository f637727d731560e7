/**
 * What a teacher's choice about an item is remembered by: the item's text without what varies from document
 * to document. `"1. Ai – rain "` and `"ai - rain"` are one, `"-er"` and `"er"` are two.
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
