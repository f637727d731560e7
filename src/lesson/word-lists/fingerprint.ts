/**
 * Returns the fingerprint of a text (FNV-1a, 24 bits in base 36). A list is stored as fingerprints when its words are
 * not to be read.
 */
export function fingerprint(text: string): string {
  let sum = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) sum = Math.imul(sum ^ text.charCodeAt(i), 0x01000193);
  return ((sum ^ (sum >>> 24)) & 0xffffff).toString(36);
}
