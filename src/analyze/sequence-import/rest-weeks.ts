import { restWords } from './word-roles.ts';

/** Words that may stand beside "review" or "break" without making it something to teach. */
const companions = new Set(
  [
    'week weeks day days lesson lessons unit units step steps term terms half school year years quarter month time',
    'of the and or to all any from in on for with our as at this that so far previous earlier past last end mid new',
    'no up check catch flex buffer make spring summer autumn fall winter easter christmas thanksgiving bank public',
    'floating flexible spare free off window period cycle pause',
    'gaps progress pupil pupils student students data benchmark monitoring screening screener formal informal phonics',
    'taught learned learnt known sounds sound letters letter words word patterns pattern skills skill content',
    'everything cumulative mixed extra further re practice practise through until only first second third final start',
    'check checks performance task project presentation celebration conferences',
    'reading spelling checkpoint open secure needed as one two three four five six week1 teaching apply and application',
  ].flatMap((row) => row.split(' ')),
);

/** Words that need company to mean a week without teaching. */
const phrases =
  /\b(?:half term|no (?:new )?(?:teaching|school|letters?|sounds?|content|patterns?|learning)|catch ?up|checks?|check ?(?:up|in|point)|make up|end of (?:year|term|unit))\b/;

/** Whether a clause says that nothing new is taught: a review, an assessment, a break. It names no letters itself. */
export function isRestWeek(text: string): boolean {
  if (/^n\s?\/\s?a\.?$/i.test(text.trim())) return true;
  const words = text.toLowerCase().match(/[\p{L}]+|\p{N}+/gu) ?? [];
  const plain = words.join(' ');
  const rests = words.filter((word) => restWords.has(word));
  if (rests.length === 0 && !phrases.test(plain)) return false;
  return words.every((word) => restWords.has(word) || companions.has(word) || /^\p{N}+$/u.test(word));
}

/** Whether a clause says so in words, whatever else it tells of the week: "Spring concert, no new teaching". */
export function saysNothingNew(text: string): boolean {
  return /\bnothing (?:new|is taught)\b|\bno (?:new|phonics|school|class(?:es)?|lessons?|teaching|instruction)\b/i.test(
    text,
  );
}
