import type { PatternId } from '../analyze/types.ts';
import { patternLabel } from '../marks/pattern-label.ts';
import { say } from '../wording/say.ts';
import { patternName } from './pattern-name.ts';

/** Forms of labels that differ only in their letters. */
const ALIKE = [
  [/^(?<letters>[a-z]+) at the start of a word$/, 'patterns.atStart'],
  [/^(?<letters>[a-z]+) at the end of a word$/, 'patterns.atEnd'],
  [/^suffix (?<letters>-[^ ]+)$/, 'patterns.suffix'],
  [/^prefix (?<letters>[^ ]+-)$/, 'patterns.prefix'],
  [/^root (?<letters>[^ ]+)$/, 'patterns.root'],
] as const;

/**
 * Returns the same names as `patternNames`, but says the common words of neighbouring patterns once: `bl, cl, fl at the
 * start of a word`.
 */
export function patternsInShort(ids: readonly PatternId[]): string {
  const runs: { text: (typeof ALIKE)[number][1] | null; names: string[] }[] = [];
  for (const id of ids) {
    const label = patternLabel(id);
    const [like, text] = ALIKE.find(([like]) => like.test(label)) ?? [null, null];
    const name = like ? like.exec(label)!.groups!.letters! : patternName(id);
    const last = runs.at(-1);
    if (text !== null && last?.text === text) last.names.push(name);
    else runs.push({ text, names: [name] });
  }
  return runs
    .map(({ text, names }) => (text === null ? names[0]! : say(text, { spelling: names.join(', ') })))
    .join('; ');
}
