/**
 * Wraps words to lines of at most `width` characters. The first line begins with `first`, the others with `rest`. A
 * word longer than a line gets a line of its own.
 */
export function wrapLines(words: readonly string[], width: number, first = '', rest = ''): string {
  const lines = [first];
  let isEmpty = true;
  for (const word of words) {
    if (!isEmpty && lines.at(-1)!.length + 1 + word.length > width) {
      lines.push(rest);
      isEmpty = true;
    }
    lines.push(`${lines.pop()}${isEmpty ? '' : ' '}${word}`);
    isEmpty = false;
  }
  return lines.join('\n');
}
