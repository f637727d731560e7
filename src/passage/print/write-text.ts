import { type Sheet, textOfRuns } from './make-sheet.ts';

/** A sheet as plain text: its parts with an empty line between them. */
export function writeText({ title, storyWords, lines, source }: Sheet): string {
  const meanings = storyWords.map(({ word, meaning }) => (meaning ? `${word}: ${meaning}` : word));
  let text = '';
  for (const [i, { kind, runs }] of lines.entries()) {
    const inList = kind === 'item' && lines[i - 1]?.kind === 'item';
    if (i > 0) text += inList ? '\n' : '\n\n';
    text += (kind === 'item' ? '- ' : '') + textOfRuns(runs);
  }
  const parts = [
    title,
    meanings.length > 0 ? ['Words to pre-teach', ...meanings].join('\n') : '',
    text,
    source ?? '',
  ];
  return `${parts.filter((part) => part !== '').join('\n\n')}\n`;
}
