/** Words at the beginning of a sentence that speak of the one before. */
const SPEAKS_BACK =
  /^["“]?(?:he|she|it|they|him|her|his|its|their|them|this|that|these|those|such|both|but|so|then|also|however|yet|still|instead|there|here|another|others?|and|or)\b/i;
const NAME = /(?<![.!?]["”’)]?\s|^["“]?)\b\p{Lu}\p{L}+/gu;

/** Whether sentences behind one speak of it: the next begins with it, this or but, or a name is first met in it that comes again. */
export function isReferredTo(sentence: string, before: string, after: string): boolean {
  if (SPEAKS_BACK.test(after.trimStart())) return true;
  return (sentence.match(NAME) ?? []).some((name) => !before.includes(name) && after.includes(name));
}
