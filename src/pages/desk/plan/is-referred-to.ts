/** Words at the beginning of a sentence that refer to the previous sentence. */
const SPEAKS_BACK =
  /^["“]?(?:he|she|it|they|him|her|his|its|their|them|this|that|these|those|such|both|but|so|then|also|however|yet|still|instead|there|here|another|others?|and|or)\b/i;
const NAME = /(?<![.!?]["”’)]?\s|^["“]?)\b\p{Lu}\p{L}+/gu;

/**
 * Returns whether later sentences refer to a sentence. They do when the next sentence begins with a word such as 'it',
 * 'this' or 'but'. They also do when a name first appears in the sentence and appears again later.
 */
export function isReferredTo(sentence: string, before: string, after: string): boolean {
  if (SPEAKS_BACK.test(after.trimStart())) return true;
  return (sentence.match(NAME) ?? []).some((name) => !before.includes(name) && after.includes(name));
}
