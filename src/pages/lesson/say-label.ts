import { patternNames } from '../../analyze/index.ts';
import { patternName } from '../../ui/pattern-name.ts';
import { say } from '../../wording/say.ts';
import { lessonTexts } from './lesson-texts.ts';

const patterns = new Map(patternNames.map(({ id, label }) => [label, id]));

/**
 * Returns a label of a lesson in the reader’s language. The label names a part, a choice or an option of a choice, or
 * says why a part is empty. Words and numbers in the label stay as they are.
 */
export function sayLabel(label: string): string {
  const text = lessonTexts.get(label);
  if (text) return say(text);
  const pattern = patterns.get(label);
  if (pattern) return patternName(pattern);
  const sound = /^(?<spelling>.+) as in (?<word>\S+)$/.exec(label)?.groups;
  if (sound) return say('patterns.asIn', { spelling: sound.spelling!, word: sound.word! });
  const unread = /^(?<word>\S+) \(not yet readable\)$/.exec(label)?.groups;
  if (unread) return say('lesson.notYetReadable', { word: unread.word! });
  const none = /^No word for (?<what>.+) can be read yet without other patterns: (?<next>.+)\.$/.exec(
    label,
  )?.groups;
  return none
    ? say('lesson.noWordFor', { pattern: sayLabel(none.what!), next: sayLabel(none.next!) })
    : label;
}
